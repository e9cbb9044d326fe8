/* Rodwright's viewer, from sources of SHA-256 5d743afa21655c4b90f45b899843304d7886690ecb980f298d94e6bb377b48e2 */
/*
It holds:

@preact/signals 2.11.4

The MIT License (MIT)

Copyright (c) 2022-present Preact Team

Permission is hereby granted, free of charge, to any person obtaining a copy
of this software and associated documentation files (the "Software"), to deal
in the Software without restriction, including without limitation the rights
to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
copies of the Software, and to permit persons to whom the Software is
furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all
copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE
SOFTWARE.


@preact/signals-core 1.14.5

The MIT License (MIT)

Copyright (c) 2022-present Preact Team

Permission is hereby granted, free of charge, to any person obtaining a copy
of this software and associated documentation files (the "Software"), to deal
in the Software without restriction, including without limitation the rights
to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
copies of the Software, and to permit persons to whom the Software is
furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all
copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE
SOFTWARE.


preact 11.2.0

The MIT License (MIT)

Copyright (c) 2015-present Jason Miller

Permission is hereby granted, free of charge, to any person obtaining a copy
of this software and associated documentation files (the "Software"), to deal
in the Software without restriction, including without limitation the rights
to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
copies of the Software, and to permit persons to whom the Software is
furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all
copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE
SOFTWARE.


three 0.187.0

The MIT License

Copyright © 2010-2026 three.js authors

Permission is hereby granted, free of charge, to any person obtaining a copy
of this software and associated documentation files (the "Software"), to deal
in the Software without restriction, including without limitation the rights
to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
copies of the Software, and to permit persons to whom the Software is
furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in
all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN
THE SOFTWARE.
*/
"use strict";(()=>{var je,Rf,Dh,Vi,Ih,ba,Cf,xa,Pf,Nh,Lh,T0,Qr=Symbol.for("pv"),Ma={},wa=[],A0=/^m(i|n|o|s|text|space)$/,Uh=Array.isArray,Oh=wa.slice,_s=Object.assign;function gs(n){n&&n.parentNode&&n.remove()}function If(n,e,t){var i,s,r,o={},a=arguments.length;for(r in e)r=="key"?i=e[r]:r=="ref"&&typeof n!="function"?s=e[r]:o[r]=e[r];return a>2&&(o.children=a>3?Oh.call(arguments,2):t),jr(n,o,i,s,null)}function jr(n,e,t,i,s){var r={type:n,props:e,key:t,ref:i,__k:null,__:null,__b:0,__e:null,__c:null,constructor:Qr,__v:s||++Rf,__i:-1,__u:0};return!s&&je.vnode&&je.vnode(r),r}function Ne(n){return n.children}function Ws(n,e){this.props=n,this.context=e,this.__g=0}function Gi(n,e){if(e==null)return n.__&&Gi(n.__,n.__i+1);for(var t;e<n.__k.length;e++)if((t=n.__k[e])&&t.__e)return t.__e;return typeof n.type!="function"||n.props.__P?null:Gi(n)}function R0(n){var e,t=n.__v,i=t.__e,s=[],r=[],o=n.__P;o&&((e=_s({constructor:Qr},t)).__v=t.__v+1,je.vnode&&je.vnode(e),Fh(o,e,t,n.__n,o.namespaceURI,32&t.__u?[i]:null,s,i||Gi(t),32&t.__u,r),e.__v=t.__v,e.__.__k[e.__i]=e,Ff(s,e,r),t.__=t.__e=null,e.__e!=i&&Lf(e))}function Lf(n){if((n=n.__)&&n.__c&&!n.props.__P)return n.__e=null,n.__k.some(function(e){return e&&(n.__e=e.__e)}),Lf(n)}function Tf(n){(8&n.__g||(n.__g|=8,Vi.push(n),ba++))&&Ih==je.debounceRendering||((Ih=je.debounceRendering)||queueMicrotask)(Df)}function Df(){try{for(var n,e=1;Vi.length;)Vi.length>e&&Vi.sort(Cf),n=Vi.shift(),e=Vi.length,8&n.__g&&R0(n)}finally{(ba=Vi.length)&&(Ih||queueMicrotask)(Df)}}function Nf(n,e,t,i,s,r,o,a,l,c,h){var f,d,u,m,y,p,g=i.__k||wa,M=e.length;for(l=C0(t,e,g,l,M),f=0;f<M;f++)(u=t.__k[f])!=null&&(d=~u.__i&&g[u.__i]||Ma,u.__i=f,p=Fh(n,u,d,s,r,o,a,l,c,h),m=u.__e,(d.ref!=u.ref||8&d.__u)&&(d.ref&&Bh(d.ref,null,u,d),u.ref&&h.push(u.ref,u.__c||m,u)),y=y||m,4&u.__u?(l=Uf(u,l,n,!d.__v),d.__e&&(d.__e=null)):typeof u.type=="function"&&p!==void 0?l=p:m&&(l=m.nextSibling),u.__u&=-21);return t.__e=y,l}function C0(n,e,t,i,s){var r,o,a,l,c,h,f,d,u,m=t.length,y=m,p=0,g=0,M=n.__k=Array(s);for(r=0;r<s;r++)(o=e[r])!=null&&typeof o!="boolean"&&typeof o!="function"?(typeof o!="object"||o.constructor===String?o=M[r]=jr(null,o):Uh(o)?o=M[r]=jr(Ne,{children:o}):o.constructor===Qr&&o.__b?o=M[r]=jr(o.type,o.props,o.key,o.ref,o.__v):M[r]=o,l=r+p,o.__=n,o.__b=n.__b+1,a=null,~(c=o.__i=P0(o,t,l,y))&&(y--,(a=t[c])&&(a.__u|=2)),a&&a.__v?(o.__u|=16,c==l-1?p--:c==l+1?p++:c!=l&&(c>l?p--:p++,g=1)):(~c||(s>m?p--:s<m&&p++),typeof o.type!="function"&&(o.__u|=4))):M[r]=null;if(g){for(h=[],f=[],r=0;r<s;r++)if((o=M[r])&&16&o.__u){for(p=0,d=h.length;p<d;)h[u=p+d>>1]<o.__i?p=u+1:d=u;h[p]=o.__i,f[r]=p+1}for(p=h.length;r--;)f[r]&&(f[r]==p?p--:M[r].__u|=4)}if(y)for(r=0;r<m;r++)!(a=t[r])||2&a.__u||(a.__e==i&&(i=Gi(a)),kh(a,a));return i}function Uf(n,e,t,i){var s,r,o,a;if(typeof n.type=="function"){if(n.props.__P)return e;if(s=n.__k)for(r=0;r<s.length;r++)s[r]&&(s[r].__=n,e=Uf(s[r],e,t,!1));return e}for(e&&!e.parentNode&&(e=Gi(n))&&!e.parentNode&&(e=null),o=n.__e,a=e;a&&a.nodeType==8;)a=a.nextSibling;for(o!=a&&(!i&&t.moveBefore&&o.parentNode?t.moveBefore(o,e):t.insertBefore(o,e||null)),e=o;(e=e&&e.nextSibling)&&e.nodeType==8&&!e.data.startsWith("$s"););return e}function P0(n,e,t,i){var s,r=n.key,o=n.type,a=e[t],l=a&&!(2&a.__u);if(a===null&&r==null||l&&r==a.key&&o==a.type)return t;if(i>(l?1:0)){for(s=t-1;s>=0;s--)if((a=e[s])&&!(2&a.__u)&&r==a.key&&o==a.type)return s;for(s=t+1;s<e.length;s++)if((a=e[s])&&!(2&a.__u)&&r==a.key&&o==a.type)return s}return-1}function Af(n,e,t){t==null&&(t=""),e[0]=="-"?n.setProperty(e,t):n[e]=t}function ya(n,e,t,i,s){var r,o;if(e=="style")if(typeof t=="string")n.style.cssText=t;else{if(typeof i=="string"&&(n.style.cssText=i=""),i)for(e in i)t&&e in t||Af(n.style,e);if(t)for(e in t)i&&t[e]==i[e]||Af(n.style,e,t[e])}else if(e[0]=="o"&&e[1]=="n")typeof t!="function"&&(t=null),typeof i!="function"&&(i=null),(n.__e||(n.__e={}))[e]=t,t&&i||(o=Lh[e]||(Lh[e]=I0(e)),(n.__a||(n.__a={}))[e]=Nh,r=e!=(e=e.replace(Pf,"$1")),(e=e.slice(2))[0]<"a"&&(e=e.toLowerCase()),t?n.addEventListener(e,o,r):n.removeEventListener(e,o,r));else{if(s=="http://www.w3.org/2000/svg")e=e.replace(/xlink(H|:h)/,"h").replace(/sName$/,"s");else if(e!="width"&&e!="height"&&e!="href"&&e!="list"&&e!="form"&&e!="tabIndex"&&e!="download"&&e!="rowSpan"&&e!="colSpan"&&e!="role"&&e!="popover"&&e in n)try{return void(n[e]=t??"")}catch{}if(typeof t=="function")return;t==null||t===!1&&e[4]!="-"?n.removeAttribute(e):n.setAttribute(e,e=="popover"&&t==1?"":t)}}function I0(n){return function(e){var t=this.__e;if(t){if(t=t[n],e[xa]==null)e[xa]=Nh++;else if(e[xa]<this.__a[n])return;return t(je.event?je.event(e):e)}}}function Fh(n,e,t,i,s,r,o,a,l,c){var h,f,d,u,m,y,p,g,M,w,b,C,R,_,E,k,D,U,z=e.type;if(e.constructor!==Qr)return null;128&t.__u&&(l=32&t.__u,h=t.__c.__z)&&(e.__u|=l,f=r=[],h.nodeType==8?a=Sa(h,r):r.push(h),a=r[0]||a),(h=je.__b)&&h(e);e:if(typeof z=="function"){d=o.length;try{if(g=e.props,M=(h=z.prototype)&&h.render,w=(h=z.contextType)&&i[h.__c],b=h?w?w.props.value:h.__:i,(u=t.__c)?(e.__c=u,2&u.__g&&(u.__g|=1)):(M?e.__c=u=new z(g,b):(e.__c=u=new Ws(g,b),u.constructor=z,u.render=D0),w&&w.sub(u),u.state||(u.state={}),u.__n=i,u.__g|=8,u.__h=[],u.__k=[]),M&&(u.__s||(u.__s=u.state),z.getDerivedStateFromProps&&(u.__s==u.state&&(u.__s=_s({},u.__s)),_s(u.__s,z.getDerivedStateFromProps(g,u.__s)))),m=u.props,y=u.state,u.__v=e,t.__c){if(g!==m&&M&&!z.getDerivedStateFromProps&&u.componentWillReceiveProps&&u.componentWillReceiveProps(g,b),e.__v==t.__v&&!(8&u.__g)||!(4&u.__g)&&u.shouldComponentUpdate&&u.shouldComponentUpdate(g,u.__s,b)===!1){e.__v!=t.__v&&(u.props=g,u.state=u.__s,u.__g&=-9),e.__e=t.__e,e.__k=t.__k,e.__k.some(function(H){H&&(H.__=e)}),wa.push.apply(u.__h,u.__k),u.__k=[],u.__h.length&&o.push(u),a=Gi(t);break e}u.componentWillUpdate&&u.componentWillUpdate(g,u.__s,b),M&&u.componentDidUpdate&&u.__h.push(function(){u.componentDidUpdate(m,y,p)})}else M&&!z.getDerivedStateFromProps&&u.componentWillMount&&u.componentWillMount(),M&&u.componentDidMount&&u.__h.push(u.componentDidMount);u.context=b,u.props=g,u.__P=n,u.__g&=-5,C=je.__r,R=M?25:0;do u.__g&=-9,C&&C(e),h=u.render(u.props,u.state=u.__s,u.context);while(8&u.__g&&++R<25);M&&(wa.push.apply(u.__h,u.__k),u.__k=[]),u.state=u.__s,u.getChildContext&&(i=_s({},i,u.getChildContext())),M&&t.__c&&u.getSnapshotBeforeUpdate&&(p=u.getSnapshotBeforeUpdate(m,y)),_=h&&h.type===Ne&&h.key==null?h.props.children:h,g.__P&&(h=a,s=(n=g.__P).namespaceURI,l=r=null,t.props&&t.props.__P!=n&&(t.__k.some(function(H){H&&kh(H,H)}),t.__k=null),a=t.__k?Gi(t,0):null),a=Nf(n,Uh(_)?_:[_],e,t,i,s,r,o,a,l,c),g.__P&&(e.__e=null,a=h),e.__u&=-161,f&&f.some(gs),u.__h.length&&o.push(u),1&u.__g&&(u.__g&=-4)}catch(H){if(o.length=d,e.__v=null,l||r)if(H&&H.then){if(e.__u|=128|l,r){for(~(D=r.indexOf(a||void 0))||(D=r.length);(U=r[D-1])&&U.nodeType==8;)D--;for(;D<r.length;D++)if(U=r[D])if(r[D]=null,E){if(U==k)break}else{if(U.nodeType!=8)break;U.data.startsWith("$s")&&(k=Sa(E=U))}}if(!E){for(;a&&a.nodeType==8&&a.nextSibling;)a=a.nextSibling;E=a}(h=Sa(E=e.__c.__z||(e.__c.__z=E)))?(e.__e=E,a=h):e.__e=a,a=a&&a.nextSibling}else r&&r.some(gs);else e.__e=t.__e;e.__k||(e.__k=t.__k||[]),H&&H.then||Of(e),je.__e(H,e,t)}}else a=e.__e=L0(t.__e,e,t,i,s,r,o,l,c,n);return(h=je.diffed)&&h(e),a}function Sa(n,e){if(n&&n.nodeType==8&&n.data.startsWith("$s"))for(var t=1;n=n.nextSibling;){if(n.nodeType==8){if(n.data.startsWith("$s"))t++;else if(n.data.startsWith("/$s")&&!--t)return n}e&&e.push(n)}}function Of(n){n&&(n.__c&&(n.__c.__g|=4),n.__k&&n.__k.some(Of))}function Ff(n,e,t){for(var i=0;i<t.length;)Bh(t[i++],t[i++],t[i++]);je.__c&&je.__c(e,n),n.some(function(s){try{n=s.__h,s.__h=[],n.some(function(r){r.call(s)})}catch(r){je.__e(r,s.__v)}})}function L0(n,e,t,i,s,r,o,a,l,c){var h,f,d,u,m,y,p,g,M=t.props||Ma,w=e.props,b=e.type;if(b=="svg"?s="http://www.w3.org/2000/svg":b=="math"?s="http://www.w3.org/1998/Math/MathML":s||(s="http://www.w3.org/1999/xhtml"),r){for(h=0;h<r.length;h++)if((m=r[h])&&(b?m.localName==b:m.nodeType==3)){n=m,r[h]=null;break}}if(!n){if(g=c.ownerDocument||document,!b)return g.createTextNode(w);n=g.createElementNS(s,b,w.is?w:c),a&&(je.__m&&je.__m(e,r),a=!1),r=null}if(b){if(c=b=="template"&&n.content||n,r=b=="textarea"&&w.defaultValue!=null?null:r&&Oh.call(c.childNodes),!a&&r)for(M={},h=0;h<n.attributes.length;h++)M[(m=n.attributes[h]).name]=m.value;for(h in M)m=M[h],h=="dangerouslySetInnerHTML"?d=m:h=="children"||h in w||h=="value"&&"defaultValue"in w||h=="checked"&&"defaultChecked"in w||ya(n,h,null,m,s);for(h in w)m=w[h],h=="children"?u=m:h=="dangerouslySetInnerHTML"?f=m:h=="value"?y=m:h=="checked"?p=m:a&&typeof m!="function"||M[h]===m||ya(n,h,m,M[h],s);f?(a||d&&(f.__html==d.__html||f.__html==n.innerHTML)||(n.innerHTML=f.__html),e.__k=[]):(d&&(n.textContent=""),(b=="foreignObject"||s=="http://www.w3.org/1998/Math/MathML"&&A0.test(b))&&(s="http://www.w3.org/1999/xhtml"),Nf(c,Uh(u)?u:[u],e,t,i,s,r,o,r?r[0]:t.__k&&Gi(t,0),a,l),r&&r.some(gs)),a&&b!="textarea"||(h="value",b=="progress"&&y==null?n.removeAttribute(h):y==null||y===n[h]&&(b!="progress"||y)||ya(n,h,y,M[h],s),h="checked",p!=null&&p!=n[h]&&ya(n,h,p,M[h],s))}else M===w||a&&n.data==w||(n.data=w);return n}function Bh(n,e,t,i){try{typeof n=="function"?e?e.__x=n(e)||1:i&&(i=i.__c||i.__e)&&(e=i.__x)&&(i.__x=null,typeof e=="function"?e():n(null)):n.current=e}catch(s){je.__e(s,t)}}function kh(n,e,t){var i,s,r,o;if(je.unmount&&je.unmount(n),!(i=n.ref)||i.current&&i.current!=n.__e||Bh(i,null,e,n),i=n.__c){if(i.componentWillUnmount)try{i.componentWillUnmount()}catch(a){je.__e(a,e)}i.__P=i.__n=null}if(i=n.__k)for(o=0;o<i.length;o++)i[o]&&kh(i[o],e,typeof n.type!="function"||t&&!n.props.__P);!t&&(i=n.__c)&&(i=i.__z)&&(s=Sa(i,r=[]))&&(i==n.__e&&r.some(gs),gs(s),gs(i)),t||gs(n.__e),n.__e=n.__c=n.__=null}function D0(n,e,t){return this.constructor(n,t)}function zh(n,e){var t,i,s,r;je.__&&je.__(n,e),e.nodeType==9&&(e=e.documentElement),i=(t=n&&32&n.__u)?null:e.__k,e.__k=jr(Ne,{children:[n]}),s=[],r=[],Fh(e,e.__k,i||Ma,Ma,e.namespaceURI,i?null:e.firstChild?Oh.call(e.childNodes):null,s,i?i.__e:e.firstChild,t,r),Ff(s,e.__k,r),e.__k.props.children=null}je={__e:function(n,e,t,i){for(var s,r,o;e=e.__;)if((s=e.__c)&&!(1&s.__g)){s.__g|=4;try{if((o=(r=s.constructor)&&r.getDerivedStateFromError)&&s.setState(r.getDerivedStateFromError(n)),s.componentDidCatch&&(s.componentDidCatch(n,i||{}),o=1),o&&8&s.__g)return void(s.__g|=2)}catch(a){n=a}}throw ba=0,n}},Rf=0,Dh=function(n){return n!=null&&n.constructor===Qr},Ws.prototype.setState=function(n,e){var t=this.__s;t&&t!=this.state||(t=this.__s=_s({},this.state)),typeof n=="function"&&(n=n(_s({},t),this.props)),n&&(_s(t,n),this.__v&&(e&&this.__k.push(e),Tf(this)))},Ws.prototype.forceUpdate=function(n){this.__v&&(this.__g|=4,n&&this.__h.push(n),Tf(this))},Ws.prototype.render=Ne,Vi=[],ba=0,Cf=function(n,e){return n.__v.__b-e.__v.__b},xa=Symbol(),Pf=/(PointerCapture)$|Capture$/i,Nh=0,Lh={},T0=0;var Xs,Mt,Vh,Bf,Gh=Object.is,Ea=0,Yf=[],Hh=[],xt=je,kf=xt.__b,zf=xt.__r,Vf=xt.diffed,Gf=xt.__c,Hf=xt.unmount,Wf=xt.__;function Ta(n,e){xt.__h&&xt.__h(Mt,n,Ea||e),Ea=0;var t=Mt.__H||(Mt.__H={__:[],__h:[]});return n>=t.__.length&&t.__.push({}),t.__[n]}function Hi(n){return Ea=1,N0($f,n)}function N0(n,e,t){var i=Ta(Xs++,2);if(i.t=n,!i.__c&&(i.__=[t?t(e):$f(void 0,e),function(r){var o=(i.__N||i.__)[0],a=i.t(o,r);Gh(o,a)||(i.__N=[a,i.__[1]],i.__c.setState({}))}],i.__c=Mt,!Mt.__f)){Mt.__f=!0;var s=Mt.shouldComponentUpdate;Mt.shouldComponentUpdate=function(r,o,a){var l=this.__H;if(!l)return!0;var c=!1,h=this.props!=r;if(l.__.some(function(d){d.__N&&(c=!0,Gh(d.__[0],d.__N[0])||(h=!0))}),s){var f=s.call(this,r,o,a);return c?f||h:f}return!c||h}}return i.__}function Gn(n,e){var t=Ta(Xs++,3);!xt.__s&&Xh(t.__H,e)&&(t.__P=!0,t.__=n,t.u=e,Mt.__H.__h.push(t))}function qs(n,e){var t=Ta(Xs++,4);!xt.__s&&Xh(t.__H,e)&&(t.__P=!1,t.__=n,t.u=e,Mt.__h.push(t))}function wt(n){return Ea=5,Aa(function(){return{current:n}},[])}function Aa(n,e){var t=Ta(Xs++,7);return Xh(t.__H,e)&&(t.__=n(),t.__H=e),t.__}function U0(){var n;do{for(;n=Hh.shift();)try{eo(n)}catch(t){xt.__e(t,{__:(n=n.__P)&&n.__v})}for(;n=Yf.shift();){var e=n.__H;if(n.__P&&e)try{e.__h.some(eo),e.__h.some(Wh),e.__h=[]}catch(t){e.__h=[],xt.__e(t,n.__v)}}}while(Hh.length)}xt.__b=function(n){Mt=null,kf&&kf(n)},xt.__=function(n,e){n&&e.__k&&e.__k.__m&&(n.__m=e.__k.__m),Wf&&Wf(n,e)},xt.__r=function(n){zf&&zf(n),Xs=0;var e=(Mt=n.__c).__H;e&&(Vh==Mt?Mt.__h=[]:(e.__h.some(eo),e.__h.some(Wh),Xs=0),e.__h=[],e.__.some(function(t){t.__N&&(t.__=t.__N),t.u=t.__N=void 0})),Vh=Mt},xt.diffed=function(n){Vf&&Vf(n);var e=n.__c;e&&e.__H&&(e.__H.__h.length&&qf(Yf.push(e)),e.__H.__.some(function(t){t.u&&(t.__H=t.u)})),Vh=Mt=null},xt.__c=function(n,e){e.some(function(t){try{t.__h.some(eo),t.__h=t.__h.filter(function(i){return!i.__||Wh(i)})}catch(i){t.__h=[function(){throw i}]}}),Gf&&Gf(n,e)},xt.unmount=function(n){Hf&&Hf(n);var e,t,i=n.__c;i&&i.__H&&(i.__H.__.some(function(s){try{if(s.__P&&s.__c){if(t===void 0){for(t=n.__;t&&(!t.__c||!t.__c.__P);)t=t.__;t=t&&t.__c}s.__P=t,qf(Hh.push(s))}else eo(s)}catch(r){e=r}}),i.__H=void 0,e&&xt.__e(e,i.__v))};var Xf=typeof requestAnimationFrame=="function";function O0(n){var e,t=function(){clearTimeout(i),Xf&&cancelAnimationFrame(e),setTimeout(n)},i=setTimeout(t,35);Xf&&(e=requestAnimationFrame(t))}function qf(n){n!=1&&Bf==xt.requestAnimationFrame||((Bf=xt.requestAnimationFrame)||O0)(U0)}function eo(n){var e=Mt,t=n.__c;typeof t=="function"&&(n.__c=void 0,t()),Mt=e}function Wh(n){var e=Mt;n.__c=n.__(),Mt=e}function Xh(n,e){return!n||n.length!=e.length||e.some(function(t,i){return!Gh(t,n[i])})}function $f(n,e){return typeof e=="function"?e(n):e}var F0=Symbol.for("preact-signals");function Ia(){if(yi>1)yi--;else{var n,e=!1;for((function(){var s=Ca;for(Ca=void 0;s!==void 0;){var r=s.S;if(r.v===s.v)for(var o=r.t;o!==void 0;o=o.x)o.i===s.i&&(o.i=r.i);s=s.o}})();no!==void 0;){var t=no;for(no=void 0,Ra++;t!==void 0;){var i=t.u;if(t.u=void 0,t.f&=-3,!(8&t.f)&&Kf(t))try{t.c()}catch(s){e||(n=s,e=!0)}t=i}}if(Ra=0,yi--,e)throw n}}function Wi(n){if(yi>0)return n();qh=++B0,yi++;try{return n()}finally{Ia()}}var to,ft=void 0;function vs(n){var e=ft,t=to;ft=void 0,to=void 0;try{return n()}finally{ft=e,to=t}}var no=void 0,yi=0,Ra=0,B0=0,qh=0,Ca=void 0,Pa=0;function Zf(n){if(ft!==void 0){var e=n.n;if(e===void 0||e.t!==ft)return e={i:0,S:n,p:ft.s,n:void 0,t:ft,e:void 0,x:void 0,r:e},ft.s!==void 0&&(ft.s.n=e),ft.s=e,n.n=e,32&ft.f&&n.S(e),e;if(e.i===-1)return e.i=0,e.n!==void 0&&(e.n.p=e.p,e.p!==void 0&&(e.p.n=e.n),e.p=ft.s,e.n=void 0,ft.s.n=e,ft.s=e),e}}function Rt(n,e){this.v=n,this.i=0,this.n=void 0,this.t=void 0,this.l=0,this.W=e?.watched,this.Z=e?.unwatched,this.name=e?.name}Rt.prototype.brand=F0;Rt.prototype.h=function(){return!0};Rt.prototype.S=function(n){var e=this,t=this.t;t!==n&&n.e===void 0&&(n.x=t,this.t=n,t!==void 0?t.e=n:vs(function(){var i;(i=e.W)==null||i.call(e)}))};Rt.prototype.U=function(n){var e=this;if(this.t!==void 0){var t=n.e,i=n.x;t!==void 0&&(t.x=i,n.e=void 0),i!==void 0&&(i.e=t,n.x=void 0),n===this.t&&(this.t=i,i===void 0&&vs(function(){var s;(s=e.Z)==null||s.call(e)}))}};Rt.prototype.subscribe=function(n){var e=this;return Qe(function(){var t=e.value;vs(function(){return n(t)})},{name:"sub"})};Rt.prototype.valueOf=function(){return this.value};Rt.prototype.toString=function(){return this.value+""};Rt.prototype.toJSON=function(){return this.value};Rt.prototype.peek=function(){var n=this;return vs(function(){return n.value})};Object.defineProperty(Rt.prototype,"value",{get:function(){var n=Zf(this);return n!==void 0&&(n.i=this.i),this.v},set:function(n){if(n!==this.v){if(Ra>100)throw new Error("Cycle detected");(function(t){yi!==0&&Ra===0&&t.l!==qh&&(t.l=qh,Ca={S:t,v:t.v,i:t.i,o:Ca})})(this),this.v=n,this.i++,Pa++,yi++;try{for(var e=this.t;e!==void 0;e=e.x)e.t.N()}finally{Ia()}}}});function Ge(n,e){return new Rt(n,e)}function Kf(n){for(var e=n.s;e!==void 0;e=e.n)if(e.S.i!==e.i||!e.S.h()||e.S.i!==e.i)return!0;return!1}function Jf(n){for(var e=n.s;e!==void 0;e=e.n){var t=e.S.n;if(t!==void 0&&(e.r=t),e.S.n=e,e.i=-1,e.n===void 0){n.s=e;break}}}function jf(n){for(var e=n.s,t=void 0;e!==void 0;){var i=e.p;e.i===-1?(e.S.U(e),i!==void 0&&(i.n=e.n),e.n!==void 0&&(e.n.p=i)):t=e,e.S.n=e.r,e.r!==void 0&&(e.r=void 0),e=i}n.s=t}function ys(n,e){Rt.call(this,void 0,e),this.x=n,this.s=void 0,this.g=Pa-1,this.f=4}ys.prototype=new Rt;ys.prototype.h=function(){if(this.f&=-3,1&this.f)return!1;if((36&this.f)==32||(this.f&=-5,this.g===Pa))return!0;if(this.g=Pa,this.f|=1,this.i>0&&!Kf(this))return this.f&=-2,!0;var n=ft;try{Jf(this),ft=this;var e=this.x();(16&this.f||this.v!==e||this.i===0)&&(this.v=e,this.f&=-17,this.i++)}catch(t){this.v=t,this.f|=16,this.i++}return ft=n,jf(this),this.f&=-2,!0};ys.prototype.S=function(n){if(this.t===void 0){this.f|=36;for(var e=this.s;e!==void 0;e=e.n)e.S.S(e)}Rt.prototype.S.call(this,n)};ys.prototype.U=function(n){if(this.t!==void 0&&(Rt.prototype.U.call(this,n),this.t===void 0)){this.f&=-33;for(var e=this.s;e!==void 0;e=e.n)e.S.U(e)}};ys.prototype.N=function(){if(!(2&this.f)){this.f|=6;for(var n=this.t;n!==void 0;n=n.x)n.t.N()}};Object.defineProperty(ys.prototype,"value",{get:function(){if(1&this.f)throw new Error("Cycle detected");var n=Zf(this);if(this.h(),n!==void 0&&(n.i=this.i),16&this.f)throw this.v;return this.v}});function ri(n,e){return new ys(n,e)}function Qf(n){var e=n.j;if(n.j=void 0,typeof e=="function"){yi++;var t=ft;ft=void 0;try{e()}catch(i){throw n.f&=-2,n.f|=8,Yh(n),i}finally{ft=t,Ia()}}}function Yh(n){for(var e=n.s;e!==void 0;e=e.n)e.S.U(e);n.x=void 0,n.s=void 0,Qf(n)}function k0(n){if(ft!==this)throw new Error("Out-of-order effect");jf(this),ft=n,this.f&=-2;try{8&this.f&&Yh(this)}finally{Ia()}}function Ys(n,e){this.x=n,this.j=void 0,this.s=void 0,this.u=void 0,this.f=32,this.name=e?.name,to&&to.push(this)}Ys.prototype.c=function(){var n=this.S();try{if(8&this.f||this.x===void 0)return;var e=this.x();typeof e=="function"&&(this.j=e)}finally{n()}};Ys.prototype.S=function(){if(1&this.f)throw new Error("Cycle detected");this.f|=1,this.f&=-9,Qf(this),Jf(this),yi++;var n=ft;return ft=this,k0.bind(this,n)};Ys.prototype.N=function(){2&this.f||(this.f|=2,this.u=no,no=this)};Ys.prototype.d=function(){this.f|=8,1&this.f||Yh(this)};Ys.prototype.dispose=function(){this.d()};function Qe(n,e){var t=new Ys(n,e);try{t.c()}catch(s){throw t.d(),s}var i=t.d.bind(t);return i[Symbol.dispose]=i,i}var ep,Da,La,z0=typeof window<"u"&&!!window.__PREACT_SIGNALS_DEVTOOLS__;var tp=[];Qe(function(){ep=this.N})();function $s(n,e){je[n]=e.bind(null,je[n]||function(){})}function io(n){if(La){var e=La;La=void 0,e()}La=n&&n.S()}function np(n){var e=this,t=n.data,i=Na(t);i.name="ReactiveDom",i.value=t;var s=Aa(function(){for(var a=e,l=e.__v;l=l.__;)if(l.__c){l.__c.__$f|=4;break}var c=ri(function(){var u=i.value.value;return u===0?0:u===!0?"":u||""}),h=ri(function(){return!Array.isArray(c.value)&&!Dh(c.value)}),f=Qe(function(){if(this.N=ip,h.value){var u=c.value;a.__v&&a.__v.__e&&a.__v.__e.nodeType===3&&(a.__v.__e.data=u)}}),d=e.__$u.d;return e.__$u.d=function(){f(),d.call(this)},[h,c]},[]),r=s[0],o=s[1];return r.value?o.peek():o.value}np.displayName="ReactiveTextNode";Object.defineProperties(Rt.prototype,{constructor:{configurable:!0,value:If(Ne,null).constructor},type:{configurable:!0,value:np},props:{configurable:!0,get:function(){var n=this;return{data:{get value(){return n.value}}}}},__b:{configurable:!0,value:1}});$s("__b",function(n,e){if(io(),Da=void 0,typeof e.type=="string"){var t,i=e.props;for(var s in i)if(s!=="children"){var r=i[s];r instanceof Rt&&(t||(e.__np=t={}),t[s]=r,i[s]=r.peek())}}n(e)});$s("__r",function(n,e){if(n(e),e.type!==Ne){io();var t,i=e.__c;i&&(i.__$f&=-2,(t=i.__$u)===void 0&&(i.__$u=t=(function(s,r){var o;return Qe(function(){o=this},{name:r}),o.c=s,o})((function(s){return function(){var r;z0&&((r=this.y)==null||r.call(this)),s.__$f|=1,s.setState({})}})(i),typeof e.type=="function"?e.type.displayName||e.type.name:""))),Da=i,io(t)}});$s("__e",function(n,e,t,i){io(),Da=void 0,n(e,t,i)});$s("diffed",function(n,e){io(),Da=void 0;var t;if(typeof e.type=="string"&&(t=e.__e)){var i=e.__np,s=e.props,r=t.U;if(r)for(var o in r){var a=r[o];a===void 0||i&&o in i||(a.d(),r[o]=void 0)}if(i){r||(r={},t.U=r);for(var l in i){var c=r[l],h=i[l];c===void 0?(c=V0(t,l,h,s),r[l]=c):c.o(h,s)}}}n(e)});function V0(n,e,t,i){var s=e in n&&n.ownerSVGElement===void 0,r=Ge(t);return{o:function(o,a){r.value=o,i=a},d:Qe(function(){this.N=ip;var o=r.value.value;i[e]!==o&&(i[e]=o,s?n[e]=o:o!=null&&(o!==!1||e[4]==="-")?n.setAttribute(e,o):n.removeAttribute(e))})}}$s("unmount",function(n,e){if(typeof e.type=="string"){var t=e.__e;if(t){var i=t.U;if(i){t.U=void 0;for(var s in i){var r=i[s];r&&r.d()}}}var o=e.__np;if(o){var a=e.props;for(var l in o)a[l]=o[l]}e.__np=void 0}else{var c=e.__c;if(c){c.__$f|=8;var h=c.__$u;h&&(c.__$u=void 0,h.d())}}n(e)});$s("__h",function(n,e,t,i){i<3&&(e.__$f|=2),n(e,t,i)});Ws.prototype.shouldComponentUpdate=function(n,e){if(this.__R)return!0;var t=this.__$u,i=t&&t.s!==void 0;for(var s in e)return!0;if(this.__f||typeof this.u=="boolean"&&this.u===!0){var r=2&this.__$f;if(!(i||r||4&this.__$f)||1&this.__$f)return!0}else if(!(i||4&this.__$f)||3&this.__$f)return!0;for(var o in n)if(o!=="__source"&&n[o]!==this.props[o])return!0;for(var a in this.props)if(!(a in n))return!0;return!1};function Na(n,e){return Aa(function(){return Ge(n,e)},[])}var G0=function(n){queueMicrotask(function(){queueMicrotask(n)})};function H0(){Wi(function(){for(var n;n=tp.shift();)ep.call(n)})}function ip(){tp.push(this)===1&&(je.requestAnimationFrame||G0)(H0)}function Sn(n,e){sp(n,e,t=>t,t=>t)}function Ua(n,e){sp(n,e,t=>[...t],t=>new Set(t))}function sp(n,e,t,i){let s=W0();if(!s)return;let r=`${location.pathname} ${n}`,o=s.getItem(r);o!==null&&(e.value=i(JSON.parse(o))),Qe(()=>s.setItem(r,JSON.stringify(t(e.value))))}function W0(){try{return sessionStorage}catch{return null}}var $h={textures:null,apart:null,details:null,dimensions:null,findings:null,lists:null,opening:null,strength:null,cutting:null,hanging:null},be=Ge(null),Xi=Ge(0),so=Ge(0),xi=Ge(0),xs=ri(()=>xi.value<so.value),gt=Ge($h),rp=ri(()=>gt.value.textures),Oa=ri(()=>gt.value.apart),Ss=ri(()=>gt.value.dimensions),Fa=ri(()=>gt.value.hanging),on=Ge(null),mn=Ge([]),qi=Ge([]),Ba=Ge(0),ka=Ge({undo:!1,redo:!1,overtaken:!1}),gn=Ge(""),vt=Ge("sent"),et=Ge(null),Si=Ge([]),bi=Ge(null),bn=Ge(0),oi=Ge(new Set),en=Ge(new Set(["room"])),Hn=Ge(null),Ht=Ge(!1),ro=Ge(null),_n=Ge([]),oo=Ge([]),Wn=Ge(!1),Ct=Ge(new Set),bs=Ge(null),Ms=Ge(null),ws=Ge({}),ao=Ge({}),Wt=Ge("findings"),Zs=Ge(""),Ks=Ge({}),Zh=38,lo=Ge(Zh),Xn=Ge("half");function op(){Sn("selected",et),Sn("tab",Wt),Sn("drawer",Xn),Sn("share",lo),Sn("filter",Zs),Sn("scrolled",Ks),Sn("apart",bn),Ua("open",oi),Ua("hidden",en),Ua("aside",Ct),Sn("pose",Ms),Sn("cut",Hn),Sn("measuring",Ht),Sn("measures",_n),Sn("dimensioned",Wn)}function Mn(n,e=!1){let t=Wt.value;Si.value=[],bi.value=null,et.value=n,e?Wt.value=t:n!==null&&(Wt.value="part")}function ap(){let n=Wt.peek(),e=et.peek(),t=[Qe(()=>{Wt.value!=="part"&&(n=Wt.value)}),Qe(()=>{et.value!==e&&(e=et.value,e!==null?Wt.value="part":Wt.peek()==="part"&&(Wt.value=n))})];return()=>t.forEach(i=>i())}function za(n){Wi(()=>{bi.value=null,Si.value=Js(n)?[]:n})}function lp(n){let e=co(n);Wi(()=>{bi.value=e?null:n,Si.value=e?[]:n.parts})}function co({rule:n,message:e,parts:t}){let i=bi.value;return i?.rule===n&&i.message===e&&Js(t)}function Js(n){let e=Si.value;return n.length>0&&e.length===n.length&&n.every((t,i)=>t===e[i])}function ho(n,e){let t=new Set(n);return t.delete(e)||t.add(e),t}function js(n){let e=Es(n);e&&(oi.value=ho(oi.value,e.label))}function Es(n){return be.value?.motions.find(e=>e.refs.includes(n??""))??null}function Kh(n){let e=n?be.value?.motions??[]:[];oi.value=new Set(e.map(t=>t.label))}var X0=Symbol.for("pv"),q0=0;function v(n,e,t,i,s,r){e||(e={});var o,a,l=e;if("ref"in l&&typeof n!="function")for(a in l={},e)a=="ref"?o=e[a]:l[a]=e[a];var c={type:n,props:l,key:t,ref:o,__k:null,__:null,__b:0,__e:null,__c:null,constructor:X0,__v:--q0,__i:-1,__u:0};return(s||r)&&(c.__source=s,c.__self=r),je.vnode&&je.vnode(c),c}var Y0={error:"M6 1h8l5 5v8l-5 5H6l-5-5V6zM6.5 6.5l7 7m0-7l-7 7",warning:"M10 1.5L19 18H1zM10 7v5.5m0 2v1.2",note:"M10 1a9 9 0 1 1 0 18a9 9 0 1 1 0-18zM10 9v5.5m0-9.2v1.4",caution:"M10 1l9 9-9 9-9-9zM10 5.5v6m0 2v1.2"};function Yi({severity:n}){return v("svg",{class:`sign ${n}`,viewBox:"0 0 20 20","aria-hidden":"true",children:v("path",{d:Y0[n]})})}var Mi={carcass:"Carcass",shelves:"Shelves",back:"Back",frame:"Face frame",doors:"Doors",drawers:"Drawers",base:"Base",surround:"Surround",fittings:"Fittings",room:"Room"},Jh={corner:"Corner",front:"Front",left:"Left",right:"Right",back:"Back",above:"Above",below:"Below"},cp={words:"About it",photographs:"Photographs",part:"Part",findings:"Findings",nudges:"Figures",parts:"Parts",lists:"Lists",opening:"Opening",strength:"Strength",cutting:"Cutting"},Va={error:{one:"Error",many:"errors"},warning:{one:"Warning",many:"warnings"},note:{one:"Note",many:"notes"},caution:{one:"Caution",many:"cautions"}};function hp(n,e){let{one:t,many:i}=Va[e];return`${n} ${n===1?t.toLowerCase():i}`}var Ga=document.title;function up(){let n=be.value,e=vt.value!=="sent",t=e&&n?`${n.title}: ${Ga}`:Ga;return Gn(()=>{document.title=t},[t]),v("header",{children:[v("h1",{title:n?.title,children:n?.title??Ga}),n&&v("p",{children:n.size}),e&&v($0,{}),!e&&v("p",{children:on.value?.maker})]})}function $0(){let{sign:n,text:e}=Z0();return v("p",{class:"stand",role:"status",children:[n&&v(Yi,{severity:n}),v("span",{children:[v("span",{class:"file",children:[Ga,", "]}),e]})]})}function Z0(){if(vt.value==="gone"||vt.value==="other")return{sign:"error",text:"not followed any more"};if(xs.value)return{text:`version ${so.value}: being read`};if(xi.value===0)return{text:"being read"};let n=`version ${xi.value}`;if(mn.value.length>0)return{sign:"error",text:`${n}: makes no unit`};let e=gt.value.findings;if(e===null||ws.value.findings!==Xi.value)return{text:`${n}: being checked`};let t=["error","warning"].map(r=>({each:r,count:e.filter(({severity:o})=>o===r).length})).filter(({count:r})=>r>0),[i]=t;if(!i)return{text:`${n}: no errors, no warnings`};let s=t.map(({each:r,count:o})=>hp(o,r)).join(", ");return{sign:i.each,text:`${n}: ${s}`}}function dp(){let n=oo.value;return n.length===0?Ht.value?v("div",{class:"measured",children:v("p",{role:"status",children:ro.value?`From ${ro.value}: touch the second point.`:"Touch two points: corners, edges or faces."})}):null:v("div",{class:"measured",children:[v("ul",{role:"status",children:n.map(({from:e,to:t,mm:i,distance:s,along:r})=>v("li",{children:[v("data",{value:i.toFixed(4),children:s})," from ",e," to ",t,": width ",r.width,", depth ",r.depth,", height ",r.height]}))}),v("button",{type:"button",onClick:()=>_n.value=[],children:"Clear"})]})}function fp(){let n=jh();return n&&v("div",{class:"dimensioned",children:v("p",{children:n})})}function jh(){let n=be.value,e=et.value||bn.value>0;if(!Wn.value||e||!n||!Ss.value)return null;let t=n.unit==="mm"?"millimetres":"inches",i=n.parts.some(s=>s.layer==="frame")?", behind the face frame":"";return`In ${t}: overall, and clear between the boards${i}`}function qn({text:n}){let e=n.split(/`([^`]+)`/);return v(Ne,{children:e.map((t,i)=>i%2===1?v("code",{children:t}):t)})}function mp(){let e=(be.value?.parts??[]).filter(t=>Ct.value.has(t.ref)).length;return v("div",{class:"over",children:[v(dp,{}),e>0&&v("p",{class:"strip",children:[e===1?"1 part is":`${e} parts are`," out of sight",v("button",{type:"button",onClick:()=>Ct.value=new Set,children:"Show all"})]}),v("div",{role:"alert",children:[gn.value&&v(J0,{}),mn.value.length>0&&v(K0,{troubles:mn.value}),vt.value==="gone"&&v(pp,{}),vt.value==="other"&&v(pp,{other:!0})]})]})}function K0({troubles:n}){let e=n.length===1,t=xs.value?e?"was":"were":e?"is":"are",i=`${e?"one thing":`${n.length} things`} ${t}`;return v("div",{class:"banner",tabIndex:0,role:"group","aria-label":"What is wrong in the file",children:[v("h2",{children:[v(Yi,{severity:"error"}),xs.value?`The file is being read. Version ${xi.value}, before it, made no unit: ${i} wrong`:`The file as it is now makes no unit: ${i} wrong`]}),v("ul",{class:"plain",children:n.map(s=>v("li",{children:[s.line!==null&&v("strong",{children:["Line ",s.line,s.column!==null&&`, column ${s.column}`,":"," "]}),v(qn,{text:s.message}),s.remedy&&v(Ne,{children:[v("br",{}),v(qn,{text:s.remedy})]})]}))}),be.value&&v("p",{class:"small",children:"What is shown is of the last file that made a unit."})]})}function pp({other:n}){return v("div",{class:"banner",children:[v("h2",{children:[v(Yi,{severity:"error"}),"The server of this page is gone"]}),v("p",{children:n?"Another server has taken its place. Open the address that the terminal shows now.":"The page doesn't follow the file any more. If the command was ended, run it again and open the address that it shows. If only the line was cut, the page goes on by itself."})]})}function J0(){return v("div",{class:"banner",children:[v("h2",{children:[v(Yi,{severity:"warning"}),"Not written to the file"]}),v("p",{children:v(qn,{text:gn.value})}),v("button",{type:"button",onClick:()=>gn.value="",children:"Understood"})]})}var j0=12,gp=1.5;function uo({caption:n,address:e}){let t=wt(null),i=wt(null),s=Na(0),r=Na(1),o=()=>{t.current.showModal(),r.value=1,s.value=Q0(i.current)},a=l=>r.value=Math.min(j0,Math.max(1,r.value*l));return v("figure",{children:[v("button",{type:"button",class:"picture","aria-label":`Enlarge: ${n}`,onClick:o,children:v("img",{src:e,alt:""})}),v("figcaption",{children:n}),v("dialog",{ref:t,"aria-label":n,children:[v("p",{class:"buttons",children:[v("button",{type:"button",onClick:()=>a(gp),children:"Larger"}),v("button",{type:"button",onClick:()=>a(1/gp),children:"Smaller"}),v("button",{type:"button",onClick:()=>t.current.close(),children:"Close"})]}),v("div",{class:"scrolling",role:"region","aria-label":n,tabIndex:0,children:v("img",{ref:i,src:e,alt:n,style:{width:`${s.value*r.value}px`}})})]})]})}function Q0(n){let{clientWidth:e,clientHeight:t}=n.parentElement,i=n.naturalWidth/n.naturalHeight||1;return Math.min(e,t*i)}var ev="data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' width='44' height='44' viewBox='0 0 44 44' fill='none' stroke='%23221e18' stroke-width='3'%3E%3Cpath d='M4 40V4h36v36zM4 32h36M14 32V14h16v18M14 23h16'/%3E%3C/svg%3E";function _p(){let n=on.value?.beside??[];if(!location.protocol.startsWith("http"))return null;let[e,t]=[".glb",".usdz"].map(s=>n.find(r=>r.endsWith(s))),i=document.createElement("a").relList.supports("ar");return(i?t:e)?v("p",{class:"placing",children:[t&&i&&v(Ne,{children:[v("a",{rel:"ar",href:t,children:v("img",{src:ev,alt:"Place it in your room"})})," ","Place it in your room"]}),e&&!i&&v("a",{href:e,download:!0,children:"The model for a 3D viewer or an Android phone (GLB)"})]}):null}var tv=60;function vp(){let n=on.value,e=be.value?.title??"";return n?v(Ne,{children:[n.draft&&v("p",{class:"ageing",children:n.draft}),e.length>tv&&v("p",{class:"title",children:e}),n.paragraphs.map(t=>v("p",{children:t})),v(nv,{facts:n.facts}),v(_p,{}),n.drawings.map(([t,i])=>v(uo,{caption:t,address:i}))]}):null}function yp(){return v(Ne,{children:on.value?.photographs.map(([n,e])=>v(uo,{caption:n,address:e}))})}function nv({facts:n}){return n.length===0?null:v("dl",{class:"facts",children:n.map(e=>v(Qh,{fact:e}))})}function Qh({fact:n}){return v(Ne,{children:[v("dt",{children:n.word}),n.lines.map(([e,t])=>v("dd",{children:[t&&v("span",{class:"swatch",style:{background:t}}),e]}))]})}var[tu,nu,xp]=[20,60,2];function Sp(){let n=wt(!1),e=lo.value;qs(()=>document.documentElement.style.setProperty("--side",`${e}vw`),[e]);let t=r=>{n.current&&eu(100*(1-r.clientX/document.documentElement.clientWidth))},i=r=>{r.currentTarget.setPointerCapture(r.pointerId),n.current=!0},s=r=>{let o=iv(r.key,e);o!==null&&(r.preventDefault(),eu(o))};return v("div",{class:"edge",role:"separator",tabIndex:0,"aria-label":"How wide the panel is","aria-orientation":"vertical","aria-controls":"panel","aria-valuemin":tu,"aria-valuemax":nu,"aria-valuenow":Math.round(e),"aria-valuetext":`${Math.round(e)} % of the page`,title:"Drag, or use the left and right arrow keys",onPointerDown:i,onPointerMove:t,onLostPointerCapture:()=>n.current=!1,onDblClick:()=>eu(Zh),onKeyDown:s})}function eu(n){lo.value=Math.min(Math.max(n,tu),nu)}function iv(n,e){switch(n){case"ArrowLeft":return e+xp;case"ArrowRight":return e-xp;case"Home":return tu;case"End":return nu;default:return null}}function Ts({section:n}){if(vt.value==="sent")return null;let e=gt.value[n]!==null,t=ws.value[n]===Xi.value,i=mn.value.length>0,s=ao.value[n],r="";return xs.value&&e?r="Of the file before; the file is being read.":i&&e?r="Of the last file that made a unit; not of the file as it is now.":i?r="Nothing yet: the file makes no unit.":s?.version===Xi.value?r=`This couldn't be worked out: ${s.message}`:e?t||(r="Of the file before; being worked out anew."):r="Being worked out.",v("p",{role:"status",class:"ageing",children:r})}var bp=Object.keys(Va);function Mp(){let n=gt.value.findings;if(n===null)return v(Ts,{section:"findings"});let e=[...n].sort((t,i)=>bp.indexOf(t.severity)-bp.indexOf(i.severity));return v(Ne,{children:[v(Ts,{section:"findings"}),e.length===0&&v("p",{children:"None: nothing is wrong that the checks can see."}),v("ul",{class:"findings plain",children:e.map(t=>v(sv,{finding:t}))})]})}function sv({finding:n}){let{severity:e,parts:t}=n,i=v(Ne,{children:[v(Yi,{severity:e}),v("span",{children:[v("strong",{children:[Va[e].one,": "]}),v(qn,{text:n.message})]})]});return v("li",{class:e,children:[t.length>0?v("button",{type:"button",class:"said","aria-pressed":co(n),onClick:()=>lp(n),children:i}):v("p",{class:"said",children:i}),n.remedy&&v("p",{children:v(qn,{text:n.remedy})}),t.length>0&&v("p",{class:"small chips",children:t.map(s=>v("button",{type:"button",class:"ref",onClick:()=>Mn(s),children:s}))}),v("details",{class:"meaning small",children:[v("summary",{children:["Rule: ",n.rule]}),n.meaning.map(([s,r])=>v("p",{children:[s&&v("strong",{children:[s,": "]}),v(qn,{text:r})]}))]})]})}var wp=2e3,rv=3,ov=1e3,Ha={},Qs={},fo=null;function iu(n){vt.value==="sent"&&(vt.value="waiting");let e=new URL(n,location.href);e.protocol=e.protocol.replace("http","ws");let t=new WebSocket(e);fo=t;let i=0,s=!1,r=setInterval(()=>{i+=1,i>rv&&(s||t.readyState===WebSocket.CONNECTING)&&o()},wp),o=()=>{fo===t&&(fo=null,clearInterval(r),t.close(),vt.value!=="other"&&(vt.value="gone"),av().then(a=>{vt.value=a,setTimeout(()=>iu(n),ov)}))};t.onopen=()=>{Ha={},Qs={},gn.value="",vt.value="there"},t.onmessage=a=>{i=0;let l=JSON.parse(a.data);s||=l.kind==="alive",lv(l)},t.onclose=o}function Wa(n){fo?.readyState===WebSocket.OPEN?fo.send(JSON.stringify(n)):gn.value="The server of this page isn't there, so nothing was changed."}async function av(){try{let n=AbortSignal.timeout(wp);return(await fetch(location.pathname,{method:"HEAD",cache:"no-store",signal:n})).ok?"gone":"other"}catch{return"gone"}}function lv(n){Wi(()=>{switch(n.kind){case"reading":so.value=n.version;break;case"model":Xi.value=xi.value=n.version,mn.value=[],be.value=hv(n.model);break;case"troubles":xi.value=n.version,mn.value=n.troubles;break;case"sections":n.version===Xi.value&&cv(n.version,n.sections);break;case"failed":ao.value={...ao.value,[n.section]:{version:n.version,message:n.message}};break;case"nudges":Ba.value=n.version,qi.value=n.nudges,ka.value=n;break;case"refused":gn.value=n.message;break;case"alive":}})}function cv(n,{textures:e,...t}){let i=Object.keys(t).map(s=>[s,n]);ws.value={...ws.value,...Object.fromEntries(i)},e&&(Qs={...Qs,...e}),gt.value={...gt.value,...t,textures:Qs}}function hv(n){let e=[...n.parts,...n.fittings].map(t=>t.shape);return Ha=Object.fromEntries(e.map(t=>[t,n.shapes[t]??Ha[t]])),Qs=Object.fromEntries(Object.entries(Qs).filter(([t])=>t in n.surfaces)),{...n,shapes:Ha}}function wi(n,e){let t=dv(n,e),i=t<0?"-":"",s=Math.abs(t);if(e==="mm"){let c=s%10;return`${i}${Math.floor(s/10)}${c?`.${c}`:""}`}let r=Math.floor(s/64),o=s%64;if(!o)return`${i}${r}`;let a=Tp(o,64),l=`${o/a}/${64/a}`;return r?`${i}${r} ${l}`:`${i}${l}`}var uv=/^(?:(\d+(?:[.,]\d*)?|[.,]\d+)|(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+))\s*(mm|in|["″])?$/i;function Ep(n,e){let t=uv.exec(n.trim());if(!t)return null;let[,i,s,r,o,a]=t,l=i?Number(i.replace(",",".")):Number(s??0)+Number(r)/Number(o);return Number.isFinite(l)?(a?a.toLowerCase()!=="mm":e==="in")?l*25.4:l:null}function su(n,e){return wi(n+.001,e)}function dv(n,e){let t=e==="mm"?10:2.5196850393700787,i=Math.floor((Math.abs(n)+1e-6)*t+.5);return n<0&&i?-i:i}function Tp(n,e){return e?Tp(e,n%e):n}var Ap=new Map,ru=new Map;function Cp(n){let e=Ap.get(n.key),t=Lp(n),s=e?.unit===n.unit||t&&e&&Rp(e)&&Rp(n)?e:void 0,r=n.number,o=s&&s.least<=r&&r<=s.most,a=s&&!t?Math.min(s.step,n.step):s?.step,l=o?{...s,step:a}:{...n,step:a??n.step};return Ap.set(n.key,{unit:n.unit,least:l.least,most:l.most,step:l.step}),l}function Rp({unit:n}){return n==="ft"||n==="in"}var fv=/\s*(?:[a-z]+|["'′″’”]+)\s*$/i,pv=/^[\s0-9./⁄¼-¾⅐-⅞-]+$/;function er(n){return po(n)?n.value:Pp(n.value)}function Pp(n){let e=n.replace(fv,"");return pv.test(e)?e:n}function ou(n,e){return n.unit==="share"?e==="1"?"share":"shares":po(n)?"":n.unit}function po(n){return lu(n)!==null}function au(n,e){let t=lu(n);return t?mv(e,t):n.unit==="in"?wi(e*25.4,"in"):`${Number(e.toFixed(4))}`}function Ip(n,e){ru.set(n.key,{text:e,feet:lu(n)})}function lu(n){return n.feet??(Lp(n)?ru.get(n.key).feet:null)}function Lp(n){let e=ru.get(n.key)?.text;return e===n.value||e===Pp(n.value)}function mv(n,[e,t,i]){let s=Math.floor(n/12+1e-9),r=wi((n-12*s)*25.4,"in");if(!s)return`${r}${i}`;let o=`${s}${e.replace(/foot|feet/,s===1?"foot":"feet")}`;return r==="0"?o:`${o}${t}${r}${i}`}function Dp(n,e){let t=ou(n,e);return t?`${e} ${t}`:e}var wn=Ge(new Map),gv=150,_v=3e3,As=new Map,vv=0,yv=Math.random().toString(36).slice(2);function mo(n){let e=As.get(n.key);clearTimeout(e?.timer);let t=`${yv}-${vv++}`;As.set(n.key,{drag:t,sent:null,at:0,timer:void 0,over:!1})}function hu(n,e,t){As.has(n.key)||mo(n);let i=As.get(n.key);if(i.over)return!1;pu(n.key,{text:e,number:t,settled:!1});let s=i.at+gv-performance.now();return clearTimeout(i.timer),s<=0?cu(n.key):i.timer=window.setTimeout(()=>cu(n.key),s),!0}function uu(n){let e=wn.value.get(n.key);e&&(pu(n.key,{...e,settled:!0}),clearTimeout(As.get(n.key)?.timer),cu(n.key),window.setTimeout(()=>Np(n.key,e.text),_v))}function du(n,e){e===null?qa(n.key):pu(n.key,{text:e,number:null,settled:!1})}function fu(n){let e=wn.value.get(n.key);if(!e||e.settled)return;let t=e.text.trim();if(t===""||t===er(n))return gn.value="",qa(n.key);mo(n),hu(n,t,null),uu(n)}function cu(n){let e=As.get(n),t=wn.value.get(n)?.text;t===void 0||t===e.sent||(e.sent=t,e.at=performance.now(),gn.value="",Wa({kind:"nudge",key:n,value:t,version:Ba.value,drag:e.drag}))}function pu(n,e){wn.value=new Map(wn.value).set(n,e)}function Np(n,e){let t=wn.peek().get(n);t?.settled&&(e===void 0||t.text===e)&&qa(n)}function qa(n){let e=new Map(wn.peek());e.delete(n),wn.value=e}Qe(()=>{let n=gn.value!=="",e=new Map(qi.value.map(t=>[t.key,t]));vs(()=>{for(let[t,i]of wn.value){let s=e.get(t),r=s&&(er(s)===i.text||s.number===i.number);n&&i.number!==null?xv(t):(n||!s||r)&&Np(t)}})});function xv(n){let e=As.get(n);clearTimeout(e.timer),e.over=!0,qa(n)}function Ya(n){gn.value="",wn.value=new Map,Wa({kind:n})}function Up(){document.addEventListener("keydown",n=>{if(!(n.ctrlKey||n.metaKey)||n.altKey||Sv(n.target))return;let e=n.key.toLowerCase();e!=="z"&&e!=="y"||(n.preventDefault(),Ya(e==="y"||n.shiftKey?"redo":"undo"))})}function Sv(n){return n instanceof HTMLInputElement?!["range","checkbox","radio","button"].includes(n.type):n instanceof HTMLTextAreaElement||n instanceof HTMLSelectElement}function Fp(){let n=qi.value,e=et.value,{changing:t,moving:i}=zp(e),s=n.filter(o=>!t.includes(o)&&!i.includes(o)),r=mn.value.length>0;return v("div",{class:"nudges",children:[v(kp,{}),n.length===0?v("p",{children:r?"The file can't be read as it is now; mend it first.":"No figures yet."}):v("p",{class:"small",children:"Each writes the file as soon as it is moved; comments and layout stay."}),v(Vp,{}),t.length>0&&v("h3",{children:["What changes ",e]}),v(go,{nudges:t}),i.length>0&&v("h3",{children:["What only moves ",e]}),v(go,{nudges:i}),s.length<n.length&&s.length>0&&v("h3",{children:"All other figures"}),v(go,{nudges:s})]})}function Bp({part:n}){let{changing:e,moving:t}=zp(n);return vt.value==="sent"||qi.value.length===0?null:v("section",{class:"nudges",children:[v("h3",{children:"Figures that change it"}),v(kp,{}),v(Vp,{}),v(go,{nudges:e}),t.length>0&&v("details",{class:"folded",children:[v("summary",{children:t.length===1?"One figure that only moves it":`${t.length} figures that only move it`}),v(go,{nudges:t})]})]})}function kp(){let{undo:n,redo:e,overtaken:t}=ka.value;return v("div",{class:"back",children:[v("p",{class:"buttons",children:[v("button",{type:"button",disabled:!n,onClick:()=>Ya("undo"),children:"Undo"}),v("button",{type:"button",disabled:!e,onClick:()=>Ya("redo"),children:"Redo"})]}),v("p",{class:"small",role:"status",children:t&&"The file was saved from elsewhere since, so what was changed here is taken back there."})]})}var bv=1e6;function zp(n){let e=Fa.value??{},t=s=>qi.value.filter(({key:r})=>n!==null&&e[r]?.[s].includes(n)).sort((r,o)=>i(r,s)-i(o,s)),i=({key:s},r)=>{let{[r]:o,sizes:a}=e[s];return a.includes(n)?o.length:o.length+bv};return{changing:t("changes"),moving:t("moves")}}function Vp(){return Fa.value?null:v(Ts,{section:"hanging"})}function go({nudges:n}){let e=new Map;for(let t of n)e.set(t.group,[...e.get(t.group)??[],t]);return v(Ne,{children:[...e].map(([t,i])=>v("fieldset",{class:"figures",children:[v("legend",{children:t}),i.map(s=>v(Mv,{nudge:s},s.key))]},t))})}function Mv({nudge:n}){let e=wn.value.get(n.key),t=`nudge-${n.key}`,i=ou(n,e?.text??er(n)),s=n.unit==="share"&&n.number===null;return v("div",{class:"nudge",children:[v("div",{class:"named",children:[v("label",{for:t,children:n.label}),v("span",{class:"small",children:n.written?`line ${n.line}`:"not in the file yet"}),v(wv,{nudge:n})]}),v(Tv,{id:t,nudge:n,draft:e}),!po(n)&&v("span",{class:"unit",children:i}),n.number!==null&&v(Av,{nudge:n,draft:e}),s&&v("p",{class:"small",children:"The only share here: it takes all that is left."}),!n.written&&v("p",{class:"small",children:"So unless the file says otherwise."}),n.also.length>0&&v(Ev,{also:n.also})]})}function wv({nudge:n}){let e=Fa.value?.[n.key];if(!e)return null;let{changes:t,moves:i,nothing:s}=e;return v(Ne,{children:[s&&v("span",{class:"small",children:"changes nothing as it is"}),v(Op,{nudge:n,does:"changes",refs:t}),v(Op,{nudge:n,does:"moves",refs:i})]})}function Op(n){let{nudge:e,does:t,refs:i}=n;if(i.length===0)return null;let s=`${t} ${i.length} ${i.length===1?"part":"parts"}`;return v("button",{type:"button",class:"lights","aria-pressed":Js(i),"aria-label":`${e.group}: ${e.label} ${s}`,onClick:()=>za(i),children:s})}function Ev({also:n}){return n.length===1?v("p",{class:"small",children:["Changes ",n[0]," too."]}):v("details",{class:"also small",children:[v("summary",{children:["Changes ",n.length," others too"]}),v("p",{children:[n.join("; "),"."]})]})}function Tv(n){let{nudge:e}=n,t=i=>{i.key==="Enter"&&fu(e),i.key==="Escape"&&(du(e,null),i.stopPropagation())};return v("input",{id:n.id,type:"text",class:po(e)?"figure whole":"figure",inputMode:e.unit===""?"numeric":"text",autocomplete:"off",spellcheck:!1,value:n.draft?.text??er(e),onInput:i=>du(e,i.currentTarget.value),onBlur:()=>fu(e),onKeyDown:t})}function Av({nudge:n,draft:e}){let{least:t,most:i,step:s}=Cp(n),r=e?.number??n.number;return v("input",{type:"range",min:t,max:i,step:s,value:r,"aria-label":`${n.group}: ${n.label}`,"aria-valuetext":Dp(n,au(n,r)),onPointerDown:()=>mo(n),onKeyDown:o=>!o.repeat&&mo(n),onInput:o=>{let a=o.currentTarget.valueAsNumber,l=au(n,a);Ip(n,l),hu(n,l,a)||(o.currentTarget.value=`${n.number}`)},onChange:()=>uu(n)})}function Gp(){let n=be.value,e=et.value,t=n?.parts.find(s=>s.ref===e);if(!n||!t)return v("p",{children:"Touch a part, or choose one in the list of parts."});let i=gt.value.details?.[t.ref];return v("article",{"aria-labelledby":"part-name",children:[v("h2",{id:"part-name",children:[v("span",{class:"ref",children:t.ref})," ",t.name]}),v("dl",{children:[v("dt",{children:"Size"}),v("dd",{class:"size",children:[t.size," ",n.unit]}),v(tr,{word:"Stock",text:t.stock}),v(tr,{word:"Material",text:i?.material}),v(tr,{word:"Weight",text:i?.weight}),v(tr,{word:"Finish",text:i?.finish}),v(tr,{word:"Edges",text:i?.edges}),v(tr,{word:"Layer",text:Mi[t.layer]})]}),v(Rv,{part:t}),v(Bp,{part:t.ref}),i&&v(Cv,{detail:i})]})}function tr({word:n,text:e}){return e?v(Ne,{children:[v("dt",{children:n}),v("dd",{children:e})]}):null}function Rv({part:n}){let e=be.value,t=Es(n.ref),i=e.parts.every(o=>o===n||Ct.value.has(o.ref)),s=Ct.value.has(n.ref),r=e.parts.map(o=>o.ref).filter(o=>o!==n.ref);return v(Ne,{children:[v("p",{class:"buttons",children:[t&&v("button",{type:"button",onClick:()=>js(n.ref),children:[oi.value.has(t.label)?"Close":"Open"," it"]}),v("button",{type:"button","aria-pressed":s,onClick:()=>Ct.value=ho(Ct.value,n.ref),children:"Hide this part"}),v("button",{type:"button","aria-pressed":i,onClick:()=>Ct.value=new Set(i?[]:r),children:"Show only this"}),v("button",{type:"button",onClick:()=>Mn(null),children:"Choose none"})]}),t&&v("p",{class:"small",children:"A second touch on it in the picture, or a double click, opens and closes it too."})]})}function Cv({detail:n}){return v(Ne,{children:[n.laid.length+n.workings.length>0&&v("section",{children:[v("h3",{children:"Workings"}),n.laid.map(e=>v("p",{children:e})),v("ul",{children:n.workings.map(e=>v("li",{children:e}))})]}),n.joined.length>0&&v("section",{children:[v("h3",{children:"Joined to"}),v("ul",{class:"plain joined",children:n.joined.map(({ref:e,how:t})=>v("li",{children:v("button",{type:"button",class:"how",onClick:()=>Mn(e),children:t})}))})]}),n.place&&v("section",{children:[v("h3",{children:"Wished for in the file"}),v("p",{children:["Line ",n.place.line,": ",v("code",{children:n.place.text.trim()})]})]})]})}function mu(){let n=be.value;if(!n)return v("p",{children:"Nothing yet."});let e=n.parts.filter(s=>s.told),t=e.filter(s=>Pv(s,Zs.value)),i=Object.keys(Mi).map(s=>({layer:s,parts:t.filter(r=>r.layer===s)})).filter(({parts:s})=>s.length>0);return v(Ne,{children:[v("p",{class:"filter",children:[v("label",{for:"filter",children:"Find"}),v("input",{id:"filter",type:"search",value:Zs.value,onInput:s=>Zs.value=s.currentTarget.value}),v("span",{role:"status",class:"small",children:[t.length," of ",e.length," parts"]})]}),i.length>0&&v(Iv,{layers:i})]})}function Pv(n,e){let t=[n.ref,n.name,n.stock,Mi[n.layer]].join(" ").toLowerCase();return e.toLowerCase().split(/\s+/).every(i=>t.includes(i))}function Iv({layers:n}){let e=wt(null),t=n.flatMap(({parts:o})=>o.map(a=>a.ref)),i=et.value,s=vt.value!=="sent";Gn(()=>{e.current.querySelector("[aria-selected=true]")?.scrollIntoView({block:"nearest"})},[i]);let r=o=>{let a=i===null?-1:t.indexOf(i),l={ArrowDown:Math.min(a+1,t.length-1),ArrowUp:Math.max(a-1,0),Home:0,End:t.length-1};if(o.key in l)Mn(t[l[o.key]],!0);else if(o.key==="Enter"&&a>=0)Wt.value="part";else return;o.preventDefault()};return v("div",{class:"parts",role:"listbox","aria-label":"Parts",tabIndex:0,ref:e,"aria-activedescendant":i!==null&&t.includes(i)?`part-${i}`:void 0,onKeyDown:r,children:n.map(({layer:o,parts:a})=>v("div",{role:"group","aria-labelledby":`layer-${o}`,children:[v("div",{class:"heading",id:`layer-${o}`,role:"presentation",children:Mi[o]}),a.map(l=>v("div",{role:"option",id:`part-${l.ref}`,"aria-selected":l.ref===i,onClick:()=>Mn(l.ref,!0),onDblClick:()=>Mn(l.ref),children:[v("span",{class:"ref",children:l.ref}),v("span",{children:[l.name,Ct.value.has(l.ref)&&" (out of sight)"]}),s&&v("span",{class:"size",children:l.size})]},l.ref))]},o))})}function Hp({table:n}){let{room:e,folded:t}=Lv(n);return v("section",{children:[v("h2",{children:n.title}),v("div",{class:"scrolling",role:"region","aria-label":n.title,tabIndex:0,ref:e,children:v("table",{role:"table",class:t?"folded":"",children:[v("thead",{role:"rowgroup",children:v("tr",{role:"row",children:n.columns.map((i,s)=>v("th",{scope:"col",role:"columnheader",class:n.figures[s]?"figure":"",children:i}))})}),v("tbody",{role:"rowgroup",children:n.rows.map((i,s)=>v(Dv,{table:n,row:i,refs:n.refs[s]??[]}))})]})}),n.note&&v("p",{class:"small",children:n.note})]})}function Lv(n){let e=wt(null),[t,i]=Hi(!1);return qs(()=>{let s=e.current,r=s.firstElementChild,o=()=>{r.classList.remove("folded");let c=s.scrollWidth>s.clientWidth;r.classList.toggle("folded",c),i(c)};o();let a=s.clientWidth,l=new ResizeObserver(()=>{s.clientWidth!==a&&(a=s.clientWidth,o())});return l.observe(s),()=>l.disconnect()},[n]),{room:e,folded:t}}function Dv(n){let{table:e,row:t,refs:i}=n,s=Js(i);return v("tr",{role:"row",class:`${i.length>0?"touched":""} ${s?"lit":""}`,onClick:i.length>0?()=>za(i):void 0,children:t.map((r,o)=>v("td",{role:"cell",class:e.figures[o]?"figure":"","data-of":e.columns[o],children:o===0&&i.length>0?v("button",{type:"button",class:"row","aria-pressed":s,children:r}):r}))})}function Wp({section:n}){let e=gt.value[n];return v(Ne,{children:[v(Ts,{section:n}),e?.words.map(t=>v("p",{children:v(qn,{text:t})})),e?.drawings.map(({caption:t,svg:i})=>v(uo,{caption:t,address:`data:image/svg+xml;charset=utf-8,${encodeURIComponent(i)}`})),e&&e.notes.length>0&&v("details",{class:"notes",children:[v("summary",{children:["Notes and cautions: ",e.notes.length]}),e.notes.map(t=>v("p",{children:v(qn,{text:t})}))]}),e?.tables.map(t=>v(Hp,{table:t}))]})}function Xp(n){let e=wt(null),{tabs:t}=n,i=t.find(r=>r.name===n.at)??t[0];Gn(()=>{e.current.querySelector("[aria-selected=true]")?.scrollIntoView({block:"nearest",inline:"center"})},[i.name]);let s=r=>{let o=Uv(r.key,t.indexOf(i),t.length);o!==null&&(r.preventDefault(),n.go(t[o].name),e.current.querySelectorAll("[role=tab]")[o].focus())};return v(Ne,{children:[v("div",{class:"tabs",role:"tablist","aria-label":n.label,ref:e,onKeyDown:s,children:t.map(r=>v("button",{type:"button",role:"tab",id:`tab-${r.name}`,"aria-controls":"panel","aria-selected":r===i,tabIndex:r===i?0:-1,onClick:()=>n.go(r.name),children:[r.label,r.count&&v("span",{class:"count",children:r.count})]},r.name))}),v(Nv,{name:i.name,place:i.place??i.name,children:i.show()})]})}function Nv(n){let{name:e,place:t,children:i}=n,s=wt(null);return qs(()=>{let r=Ks.peek()[t]??0,o=()=>{s.current.scrollTop=r,s.current.scrollTop>=r-1&&(r=0)};o();let a=new ResizeObserver(()=>r>0&&o());return a.observe(s.current.firstElementChild),()=>a.disconnect()},[t]),v("div",{class:"panel",role:"tabpanel",id:"panel",tabIndex:0,"aria-labelledby":`tab-${e}`,ref:s,onScrollEnd:()=>Ks.value={...Ks.peek(),[t]:s.current.scrollTop},children:v("div",{children:i})})}function Uv(n,e,t){switch(n){case"ArrowRight":return(e+1)%t;case"ArrowLeft":return(e-1+t)%t;case"Home":return 0;case"End":return t-1;default:return null}}var Ov=["lists","opening","strength","cutting"];function qp(){return v("aside",{class:`side ${Xn.value}`,"aria-label":"About the unit",children:[v(Sp,{}),v(zv,{}),v(Xp,{label:"About the unit",tabs:vt.value==="sent"?Bv():Fv(),at:Wt.value,go:n=>{Wt.value=n,Xn.value==="shut"&&(Xn.value="half")}})]})}function Fv(){let n=gt.value.findings;return[Yp(),$i("findings",()=>v(Mp,{}),n?`${n.length}`:void 0),$i("nudges",()=>v(Fp,{})),$i("parts",()=>v(mu,{}),`${be.value?.parts.length??0}`),...Ov.map(e=>$i(e,()=>v(Wp,{section:e})))]}function Bv(){let n=on.value,e=be.value?.parts.filter(i=>i.told).length??0;return[...n&&(n.paragraphs.length||n.facts.length||n.drawings.length)?[$i("words",()=>v(vp,{}))]:[],...n?.photographs.length?[$i("photographs",()=>v(yp,{}))]:[],Yp(),$i("parts",()=>v(mu,{}),`${e}`)]}function Yp(){return{...$i("part",()=>v(Gp,{})),place:`part ${et.value}`}}function $i(n,e,t){return{name:n,label:cp[n],show:e,...t!==void 0&&{count:t}}}var gu=["shut","half","full"],kv=24;function zv(){let n=gu.indexOf(Xn.value),e=wt(null),t=r=>Xn.value=gu[n+r]??Xn.value;return v(Ne,{children:[v("div",{class:"grip",onPointerDown:r=>{r.currentTarget.setPointerCapture(r.pointerId),e.current=r.clientY},onPointerUp:r=>{let o=(e.current??r.clientY)-r.clientY;e.current=null,Math.abs(o)>kv&&t(o>0?1:-1)}}),v("div",{class:"handle",children:[v("button",{type:"button",disabled:n===0,"aria-label":"Lower the panel",onClick:()=>t(-1)}),v("button",{type:"button",disabled:n===gu.length-1,"aria-label":"Raise the panel",onClick:()=>t(1)})]})]})}var kn={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},as={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},Pm=0,Ku=1,Im=2;var ea=1,Lm=2,Lr=3,ls=0,dn=1,zn=2,Us=0,Dr=1,Ju=2,ju=3,Qu=4,Dm=5;var Os=100,Nm=101,Um=102,Om=103,Fm=104,Bm=200,km=201,zm=202,Vm=203,ed=204,td=205,Gm=206,Hm=207,Wm=208,Xm=209,qm=210,Ym=211,$m=212,Zm=213,Km=214,Sl=0,bl=1,Ml=2,vr=3,wl=4,El=5,Tl=6,Al=7,Ql=0,Jm=1,jm=2,di=0,nd=1,id=2,sd=3,rd=4,od=5,ad=6,ld=7;var cd=300,Fs=301,Nr=302,ec=303,tc=304,yr=1e3,ci=1001,Rl=1002,zt=1003,Qm=1004;var ta=1005;var hn=1006,nc=1007;var Ui=1008;var yn=1009,hd=1010,ud=1011,Ur=1012,ic=1013,Qn=1014,ei=1015,ti=1016,sc=1017,rc=1018,Bs=1020,dd=35902,fd=35899,pd=1021,md=1022,ni=1023,Ii=1026,Oi=1027,gd=1028,oc=1029,cs=1030,ac=1031;var lc=1033,na=33776,ia=33777,sa=33778,ra=33779,cc=35840,hc=35841,uc=35842,dc=35843,fc=36196,pc=37492,mc=37496,gc=37488,_c=37489,oa=37490,vc=37491,yc=37808,xc=37809,Sc=37810,bc=37811,Mc=37812,wc=37813,Ec=37814,Tc=37815,Ac=37816,Rc=37817,Cc=37818,Pc=37819,Ic=37820,Lc=37821,Dc=36492,Nc=36494,Uc=36495,Oc=36283,Fc=36284,aa=36285,Bc=36286;var To=2300,Cl=2301,yl=2302,ku=2303,zu=2400,Vu=2401,Gu=2402;var eg=3200;var la=0,tg=1,Fi="",Xt="srgb",Ao="srgb-linear",Ro="linear",st="srgb";var xl=7680;var ng=519,ig=512,sg=513,rg=514,_d=515,og=516,ag=517,vd=518,yd=519,xd=35044;var Sd="300 es",Bn=2e3,xr=2001;function Vv(n){for(let e=n.length-1;e>=0;--e)if(n[e]>=65535)return!0;return!1}function Gv(n){return ArrayBuffer.isView(n)&&!(n instanceof DataView)}function Co(n){return document.createElementNS("http://www.w3.org/1999/xhtml",n)}function lg(){let n=Co("canvas");return n.style.display="block",n}var $p={},Sr=null;function Po(...n){let e="THREE."+n.shift();Sr?Sr("log",e,...n):console.log(e,...n)}function cg(n){let e=n[0];if(typeof e=="string"&&e.startsWith("TSL:")){let t=n[1];t&&t.isStackTrace?n[0]+=" "+t.getLocation():n[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return n}function Ce(...n){n=cg(n);let e="THREE."+n.shift();if(Sr)Sr("warn",e,...n);else{let t=n[0];t&&t.isStackTrace?console.warn(t.getError(e)):console.warn(e,...n)}}function De(...n){n=cg(n);let e="THREE."+n.shift();if(Sr)Sr("error",e,...n);else{let t=n[0];t&&t.isStackTrace?console.error(t.getError(e)):console.error(e,...n)}}function Mo(...n){let e=n.join(" ");e in $p||($p[e]=!0,Ce(...n))}function hg(n,e,t){return new Promise(function(i,s){function r(){switch(n.clientWaitSync(e,n.SYNC_FLUSH_COMMANDS_BIT,0)){case n.WAIT_FAILED:s();break;case n.TIMEOUT_EXPIRED:setTimeout(r,t);break;default:i()}}setTimeout(r,t)})}var ug={[Sl]:Sl,[Ml]:Tl,[wl]:wl,[vr]:El,[bl]:bl,[Tl]:Ml,[Al]:Al,[El]:vr},Kn=class{addEventListener(e,t){this._listeners===void 0&&(this._listeners={});let i=this._listeners;i[e]===void 0&&(i[e]=[]),i[e].indexOf(t)===-1&&i[e].push(t)}hasEventListener(e,t){let i=this._listeners;return i===void 0?!1:i[e]!==void 0&&i[e].indexOf(t)!==-1}removeEventListener(e,t){let i=this._listeners;if(i===void 0)return;let s=i[e];if(s!==void 0){let r=s.indexOf(t);r!==-1&&s.splice(r,1)}}dispatchEvent(e){let t=this._listeners;if(t===void 0)return;let i=t[e.type];if(i!==void 0){e.target=this;let s=i.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,e);e.target=null}}},tn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],Zp=1234567,wo=Math.PI/180,br=180/Math.PI;function hs(){let n=Math.random()*4294967295|0,e=Math.random()*4294967295|0,t=Math.random()*4294967295|0,i=Math.random()*4294967295|0;return(tn[n&255]+tn[n>>8&255]+tn[n>>16&255]+tn[n>>24&255]+"-"+tn[e&255]+tn[e>>8&255]+"-"+tn[e>>16&15|64]+tn[e>>24&255]+"-"+tn[t&63|128]+tn[t>>8&255]+"-"+tn[t>>16&255]+tn[t>>24&255]+tn[i&255]+tn[i>>8&255]+tn[i>>16&255]+tn[i>>24&255]).toLowerCase()}function ke(n,e,t){return Math.max(e,Math.min(t,n))}function bd(n,e){return(n%e+e)%e}function Hv(n,e,t,i,s){return i+(n-e)*(s-i)/(t-e)}function Wv(n,e,t){return n!==e?(t-n)/(e-n):0}function Eo(n,e,t){return(1-t)*n+t*e}function Xv(n,e,t,i){return Eo(n,e,1-Math.exp(-t*i))}function qv(n,e=1){return e-Math.abs(bd(n,e*2)-e)}function Yv(n,e,t){return n<=e?0:n>=t?1:(n=(n-e)/(t-e),n*n*(3-2*n))}function $v(n,e,t){return n<=e?0:n>=t?1:(n=(n-e)/(t-e),n*n*n*(n*(n*6-15)+10))}function Zv(n,e){return n+Math.floor(Math.random()*(e-n+1))}function Kv(n,e){return n+Math.random()*(e-n)}function Jv(n){return n*(.5-Math.random())}function jv(n){n!==void 0&&(Zp=n);let e=Zp+=1831565813;return e=Math.imul(e^e>>>15,e|1),e^=e+Math.imul(e^e>>>7,e|61),((e^e>>>14)>>>0)/4294967296}function Qv(n){return n*wo}function ey(n){return n*br}function ty(n){return n>0&&Number.isInteger(n)&&2**Math.round(Math.log2(n))===n}function ny(n){return Math.pow(2,Math.ceil(Math.log(n)/Math.LN2))}function Md(n){return Math.pow(2,Math.floor(Math.log(n)/Math.LN2))}function iy(n,e,t,i,s){let r=Math.cos,o=Math.sin,a=r(t/2),l=o(t/2),c=r((e+i)/2),h=o((e+i)/2),f=r((e-i)/2),d=o((e-i)/2),u=r((i-e)/2),m=o((i-e)/2);switch(s){case"XYX":n.set(a*h,l*f,l*d,a*c);break;case"YZY":n.set(l*d,a*h,l*f,a*c);break;case"ZXZ":n.set(l*f,l*d,a*h,a*c);break;case"XZX":n.set(a*h,l*m,l*u,a*c);break;case"YXY":n.set(l*u,a*h,l*m,a*c);break;case"ZYZ":n.set(l*m,l*u,a*h,a*c);break;default:Ce("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function kc(n){switch(n.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function wd(n,e){if(e.constructor===Float32Array)return n;let t=kc(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(n/t,-1)}function Ed(n,e){if(e.constructor===Float32Array)return n;let t=kc(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(n*t)}var $t={DEG2RAD:wo,RAD2DEG:br,generateUUID:hs,clamp:ke,euclideanModulo:bd,mapLinear:Hv,inverseLerp:Wv,lerp:Eo,damp:Xv,pingpong:qv,smoothstep:Yv,smootherstep:$v,randInt:Zv,randFloat:Kv,randFloatSpread:Jv,seededRandom:jv,degToRad:Qv,radToDeg:ey,isPowerOfTwo:ty,ceilPowerOfTwo:ny,floorPowerOfTwo:Md,setQuaternionFromProperEuler:iy,normalize:Ed,denormalize:wd},Ee=class{static{this.prototype.isVector2=!0}constructor(e=0,t=0){this.x=e,this.y=t}get width(){return this.x}set width(e){this.x=e}get height(){return this.y}set height(e){this.y=e}set(e,t){return this.x=e,this.y=t,this}setScalar(e){return this.x=e,this.y=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;default:throw new Error("THREE.Vector2: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y)}copy(e){return this.x=e.x,this.y=e.y,this}add(e){return this.x+=e.x,this.y+=e.y,this}addScalar(e){return this.x+=e,this.y+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this}subScalar(e){return this.x-=e,this.y-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this}multiply(e){return this.x*=e.x,this.y*=e.y,this}multiplyScalar(e){return this.x*=e,this.y*=e,this}divide(e){return this.x/=e.x,this.y/=e.y,this}divideScalar(e){return this.multiplyScalar(1/e)}applyMatrix3(e){let t=this.x,i=this.y,s=e.elements;return this.x=s[0]*t+s[3]*i+s[6],this.y=s[1]*t+s[4]*i+s[7],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this}clamp(e,t){return this.x=ke(this.x,e.x,t.x),this.y=ke(this.y,e.y,t.y),this}clampScalar(e,t){return this.x=ke(this.x,e,t),this.y=ke(this.y,e,t),this}clampLength(e,t){let i=this.length();return this.divideScalar(i||1).multiplyScalar(ke(i,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(e){return this.x*e.x+this.y*e.y}cross(e){return this.x*e.y-this.y*e.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let i=this.dot(e)/t;return Math.acos(ke(i,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,i=this.y-e.y;return t*t+i*i}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this}lerpVectors(e,t,i){return this.x=e.x+(t.x-e.x)*i,this.y=e.y+(t.y-e.y)*i,this}equals(e){return e.x===this.x&&e.y===this.y}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this}rotateAround(e,t){let i=Math.cos(t),s=Math.sin(t),r=this.x-e.x,o=this.y-e.y;return this.x=r*i-o*s+e.x,this.y=r*s+o*i+e.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},Rn=class{constructor(e=0,t=0,i=0,s=1){this.isQuaternion=!0,this._x=e,this._y=t,this._z=i,this._w=s}static slerpFlat(e,t,i,s,r,o,a){let l=i[s+0],c=i[s+1],h=i[s+2],f=i[s+3],d=r[o+0],u=r[o+1],m=r[o+2],y=r[o+3];if(f!==y||l!==d||c!==u||h!==m){let p=l*d+c*u+h*m+f*y;p<0&&(d=-d,u=-u,m=-m,y=-y,p=-p);let g=1-a;if(p<.9995){let M=Math.acos(p),w=Math.sin(M);g=Math.sin(g*M)/w,a=Math.sin(a*M)/w,l=l*g+d*a,c=c*g+u*a,h=h*g+m*a,f=f*g+y*a}else{l=l*g+d*a,c=c*g+u*a,h=h*g+m*a,f=f*g+y*a;let M=1/Math.sqrt(l*l+c*c+h*h+f*f);l*=M,c*=M,h*=M,f*=M}}e[t]=l,e[t+1]=c,e[t+2]=h,e[t+3]=f}static multiplyQuaternionsFlat(e,t,i,s,r,o){let a=i[s],l=i[s+1],c=i[s+2],h=i[s+3],f=r[o],d=r[o+1],u=r[o+2],m=r[o+3];return e[t]=a*m+h*f+l*u-c*d,e[t+1]=l*m+h*d+c*f-a*u,e[t+2]=c*m+h*u+a*d-l*f,e[t+3]=h*m-a*f-l*d-c*u,e}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get w(){return this._w}set w(e){this._w=e,this._onChangeCallback()}set(e,t,i,s){return this._x=e,this._y=t,this._z=i,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(e){return this._x=e.x,this._y=e.y,this._z=e.z,this._w=e.w,this._onChangeCallback(),this}setFromEuler(e,t=!0){let i=e._x,s=e._y,r=e._z,o=e._order,a=Math.cos,l=Math.sin,c=a(i/2),h=a(s/2),f=a(r/2),d=l(i/2),u=l(s/2),m=l(r/2);switch(o){case"XYZ":this._x=d*h*f+c*u*m,this._y=c*u*f-d*h*m,this._z=c*h*m+d*u*f,this._w=c*h*f-d*u*m;break;case"YXZ":this._x=d*h*f+c*u*m,this._y=c*u*f-d*h*m,this._z=c*h*m-d*u*f,this._w=c*h*f+d*u*m;break;case"ZXY":this._x=d*h*f-c*u*m,this._y=c*u*f+d*h*m,this._z=c*h*m+d*u*f,this._w=c*h*f-d*u*m;break;case"ZYX":this._x=d*h*f-c*u*m,this._y=c*u*f+d*h*m,this._z=c*h*m-d*u*f,this._w=c*h*f+d*u*m;break;case"YZX":this._x=d*h*f+c*u*m,this._y=c*u*f+d*h*m,this._z=c*h*m-d*u*f,this._w=c*h*f-d*u*m;break;case"XZY":this._x=d*h*f-c*u*m,this._y=c*u*f-d*h*m,this._z=c*h*m+d*u*f,this._w=c*h*f+d*u*m;break;default:Ce("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return t===!0&&this._onChangeCallback(),this}setFromAxisAngle(e,t){let i=t/2,s=Math.sin(i);return this._x=e.x*s,this._y=e.y*s,this._z=e.z*s,this._w=Math.cos(i),this._onChangeCallback(),this}setFromRotationMatrix(e){let t=e.elements,i=t[0],s=t[4],r=t[8],o=t[1],a=t[5],l=t[9],c=t[2],h=t[6],f=t[10],d=i+a+f;if(d>0){let u=.5/Math.sqrt(d+1);this._w=.25/u,this._x=(h-l)*u,this._y=(r-c)*u,this._z=(o-s)*u}else if(i>a&&i>f){let u=2*Math.sqrt(1+i-a-f);this._w=(h-l)/u,this._x=.25*u,this._y=(s+o)/u,this._z=(r+c)/u}else if(a>f){let u=2*Math.sqrt(1+a-i-f);this._w=(r-c)/u,this._x=(s+o)/u,this._y=.25*u,this._z=(l+h)/u}else{let u=2*Math.sqrt(1+f-i-a);this._w=(o-s)/u,this._x=(r+c)/u,this._y=(l+h)/u,this._z=.25*u}return this._onChangeCallback(),this}setFromUnitVectors(e,t){let i=e.dot(t)+1;return i<1e-8?(i=0,Math.abs(e.x)>Math.abs(e.z)?(this._x=-e.y,this._y=e.x,this._z=0,this._w=i):(this._x=0,this._y=-e.z,this._z=e.y,this._w=i)):(this._x=e.y*t.z-e.z*t.y,this._y=e.z*t.x-e.x*t.z,this._z=e.x*t.y-e.y*t.x,this._w=i),this.normalize()}angleTo(e){return 2*Math.acos(Math.abs(ke(this.dot(e),-1,1)))}rotateTowards(e,t){let i=this.angleTo(e);if(i===0)return this;let s=Math.min(1,t/i);return this.slerp(e,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(e){return this._x*e._x+this._y*e._y+this._z*e._z+this._w*e._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let e=this.length();return e===0?(this._x=0,this._y=0,this._z=0,this._w=1):(e=1/e,this._x=this._x*e,this._y=this._y*e,this._z=this._z*e,this._w=this._w*e),this._onChangeCallback(),this}multiply(e){return this.multiplyQuaternions(this,e)}premultiply(e){return this.multiplyQuaternions(e,this)}multiplyQuaternions(e,t){let i=e._x,s=e._y,r=e._z,o=e._w,a=t._x,l=t._y,c=t._z,h=t._w;return this._x=i*h+o*a+s*c-r*l,this._y=s*h+o*l+r*a-i*c,this._z=r*h+o*c+i*l-s*a,this._w=o*h-i*a-s*l-r*c,this._onChangeCallback(),this}slerp(e,t){let i=e._x,s=e._y,r=e._z,o=e._w,a=this.dot(e);a<0&&(i=-i,s=-s,r=-r,o=-o,a=-a);let l=1-t;if(a<.9995){let c=Math.acos(a),h=Math.sin(c);l=Math.sin(l*c)/h,t=Math.sin(t*c)/h,this._x=this._x*l+i*t,this._y=this._y*l+s*t,this._z=this._z*l+r*t,this._w=this._w*l+o*t,this._onChangeCallback()}else this._x=this._x*l+i*t,this._y=this._y*l+s*t,this._z=this._z*l+r*t,this._w=this._w*l+o*t,this.normalize();return this}slerpQuaternions(e,t,i){return this.copy(e).slerp(t,i)}random(){let e=2*Math.PI*Math.random(),t=2*Math.PI*Math.random(),i=Math.random(),s=Math.sqrt(1-i),r=Math.sqrt(i);return this.set(s*Math.sin(e),s*Math.cos(e),r*Math.sin(t),r*Math.cos(t))}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._w===this._w}fromArray(e,t=0){return this._x=e[t],this._y=e[t+1],this._z=e[t+2],this._w=e[t+3],this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._w,e}fromBufferAttribute(e,t){return this._x=e.getX(t),this._y=e.getY(t),this._z=e.getZ(t),this._w=e.getW(t),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},A=class{static{this.prototype.isVector3=!0}constructor(e=0,t=0,i=0){this.x=e,this.y=t,this.z=i}set(e,t,i){return i===void 0&&(i=this.z),this.x=e,this.y=t,this.z=i,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;default:throw new Error("THREE.Vector3: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this}multiplyVectors(e,t){return this.x=e.x*t.x,this.y=e.y*t.y,this.z=e.z*t.z,this}applyEuler(e){return this.applyQuaternion(Kp.setFromEuler(e))}applyAxisAngle(e,t){return this.applyQuaternion(Kp.setFromAxisAngle(e,t))}applyMatrix3(e){let t=this.x,i=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[3]*i+r[6]*s,this.y=r[1]*t+r[4]*i+r[7]*s,this.z=r[2]*t+r[5]*i+r[8]*s,this}applyNormalMatrix(e){return this.applyMatrix3(e).normalize()}applyMatrix4(e){let t=this.x,i=this.y,s=this.z,r=e.elements,o=1/(r[3]*t+r[7]*i+r[11]*s+r[15]);return this.x=(r[0]*t+r[4]*i+r[8]*s+r[12])*o,this.y=(r[1]*t+r[5]*i+r[9]*s+r[13])*o,this.z=(r[2]*t+r[6]*i+r[10]*s+r[14])*o,this}applyQuaternion(e){let t=this.x,i=this.y,s=this.z,r=e.x,o=e.y,a=e.z,l=e.w,c=2*(o*s-a*i),h=2*(a*t-r*s),f=2*(r*i-o*t);return this.x=t+l*c+o*f-a*h,this.y=i+l*h+a*c-r*f,this.z=s+l*f+r*h-o*c,this}project(e){return this.applyMatrix4(e.matrixWorldInverse).applyMatrix4(e.projectionMatrix)}unproject(e){return this.applyMatrix4(e.projectionMatrixInverse).applyMatrix4(e.matrixWorld)}transformDirection(e){let t=this.x,i=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[4]*i+r[8]*s,this.y=r[1]*t+r[5]*i+r[9]*s,this.z=r[2]*t+r[6]*i+r[10]*s,this.normalize()}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this}divideScalar(e){return this.multiplyScalar(1/e)}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this}clamp(e,t){return this.x=ke(this.x,e.x,t.x),this.y=ke(this.y,e.y,t.y),this.z=ke(this.z,e.z,t.z),this}clampScalar(e,t){return this.x=ke(this.x,e,t),this.y=ke(this.y,e,t),this.z=ke(this.z,e,t),this}clampLength(e,t){let i=this.length();return this.divideScalar(i||1).multiplyScalar(ke(i,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this}lerpVectors(e,t,i){return this.x=e.x+(t.x-e.x)*i,this.y=e.y+(t.y-e.y)*i,this.z=e.z+(t.z-e.z)*i,this}cross(e){return this.crossVectors(this,e)}crossVectors(e,t){let i=e.x,s=e.y,r=e.z,o=t.x,a=t.y,l=t.z;return this.x=s*l-r*a,this.y=r*o-i*l,this.z=i*a-s*o,this}projectOnVector(e){let t=e.lengthSq();if(t===0)return this.set(0,0,0);let i=e.dot(this)/t;return this.copy(e).multiplyScalar(i)}projectOnPlane(e){return _u.copy(this).projectOnVector(e),this.sub(_u)}reflect(e){return this.sub(_u.copy(e).multiplyScalar(2*this.dot(e)))}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let i=this.dot(e)/t;return Math.acos(ke(i,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,i=this.y-e.y,s=this.z-e.z;return t*t+i*i+s*s}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)+Math.abs(this.z-e.z)}setFromSpherical(e){return this.setFromSphericalCoords(e.radius,e.phi,e.theta)}setFromSphericalCoords(e,t,i){let s=Math.sin(t)*e;return this.x=s*Math.sin(i),this.y=Math.cos(t)*e,this.z=s*Math.cos(i),this}setFromCylindrical(e){return this.setFromCylindricalCoords(e.radius,e.theta,e.y)}setFromCylindricalCoords(e,t,i){return this.x=e*Math.sin(t),this.y=i,this.z=e*Math.cos(t),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this}setFromMatrixScale(e){let t=this.setFromMatrixColumn(e,0).length(),i=this.setFromMatrixColumn(e,1).length(),s=this.setFromMatrixColumn(e,2).length();return this.x=t,this.y=i,this.z=s,this}setFromMatrixColumn(e,t){return this.fromArray(e.elements,t*4)}setFromMatrix3Column(e,t){return this.fromArray(e.elements,t*3)}setFromEuler(e){return this.x=e._x,this.y=e._y,this.z=e._z,this}setFromColor(e){return this.x=e.r,this.y=e.g,this.z=e.b,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let e=Math.random()*Math.PI*2,t=Math.random()*2-1,i=Math.sqrt(1-t*t);return this.x=i*Math.cos(e),this.y=t,this.z=i*Math.sin(e),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},_u=new A,Kp=new Rn,Ue=class{static{this.prototype.isMatrix3=!0}constructor(e,t,i,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],e!==void 0&&this.set(e,t,i,s,r,o,a,l,c)}set(e,t,i,s,r,o,a,l,c){let h=this.elements;return h[0]=e,h[1]=s,h[2]=a,h[3]=t,h[4]=r,h[5]=l,h[6]=i,h[7]=o,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(e){let t=this.elements,i=e.elements;return t[0]=i[0],t[1]=i[1],t[2]=i[2],t[3]=i[3],t[4]=i[4],t[5]=i[5],t[6]=i[6],t[7]=i[7],t[8]=i[8],this}extractBasis(e,t,i){return e.setFromMatrix3Column(this,0),t.setFromMatrix3Column(this,1),i.setFromMatrix3Column(this,2),this}setFromMatrix4(e){let t=e.elements;return this.set(t[0],t[4],t[8],t[1],t[5],t[9],t[2],t[6],t[10]),this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let i=e.elements,s=t.elements,r=this.elements,o=i[0],a=i[3],l=i[6],c=i[1],h=i[4],f=i[7],d=i[2],u=i[5],m=i[8],y=s[0],p=s[3],g=s[6],M=s[1],w=s[4],b=s[7],C=s[2],R=s[5],_=s[8];return r[0]=o*y+a*M+l*C,r[3]=o*p+a*w+l*R,r[6]=o*g+a*b+l*_,r[1]=c*y+h*M+f*C,r[4]=c*p+h*w+f*R,r[7]=c*g+h*b+f*_,r[2]=d*y+u*M+m*C,r[5]=d*p+u*w+m*R,r[8]=d*g+u*b+m*_,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[3]*=e,t[6]*=e,t[1]*=e,t[4]*=e,t[7]*=e,t[2]*=e,t[5]*=e,t[8]*=e,this}determinant(){let e=this.elements,t=e[0],i=e[1],s=e[2],r=e[3],o=e[4],a=e[5],l=e[6],c=e[7],h=e[8];return t*o*h-t*a*c-i*r*h+i*a*l+s*r*c-s*o*l}invert(){let e=this.elements,t=e[0],i=e[1],s=e[2],r=e[3],o=e[4],a=e[5],l=e[6],c=e[7],h=e[8],f=h*o-a*c,d=a*l-h*r,u=c*r-o*l,m=t*f+i*d+s*u;if(m===0)return this.set(0,0,0,0,0,0,0,0,0);let y=1/m;return e[0]=f*y,e[1]=(s*c-h*i)*y,e[2]=(a*i-s*o)*y,e[3]=d*y,e[4]=(h*t-s*l)*y,e[5]=(s*r-a*t)*y,e[6]=u*y,e[7]=(i*l-c*t)*y,e[8]=(o*t-i*r)*y,this}transpose(){let e,t=this.elements;return e=t[1],t[1]=t[3],t[3]=e,e=t[2],t[2]=t[6],t[6]=e,e=t[5],t[5]=t[7],t[7]=e,this}getNormalMatrix(e){return this.setFromMatrix4(e).invert().transpose()}transposeIntoArray(e){let t=this.elements;return e[0]=t[0],e[1]=t[3],e[2]=t[6],e[3]=t[1],e[4]=t[4],e[5]=t[7],e[6]=t[2],e[7]=t[5],e[8]=t[8],this}setUvTransform(e,t,i,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(i*l,i*c,-i*(l*o+c*a)+o+e,-s*c,s*l,-s*(-c*o+l*a)+a+t,0,0,1),this}scale(e,t){return Mo("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(vu.makeScale(e,t)),this}rotate(e){return Mo("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(vu.makeRotation(-e)),this}translate(e,t){return Mo("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(vu.makeTranslation(e,t)),this}makeTranslation(e,t){return e.isVector2?this.set(1,0,e.x,0,1,e.y,0,0,1):this.set(1,0,e,0,1,t,0,0,1),this}makeRotation(e){let t=Math.cos(e),i=Math.sin(e);return this.set(t,-i,0,i,t,0,0,0,1),this}makeScale(e,t){return this.set(e,0,0,0,t,0,0,0,1),this}equals(e){let t=this.elements,i=e.elements;for(let s=0;s<9;s++)if(t[s]!==i[s])return!1;return!0}fromArray(e,t=0){for(let i=0;i<9;i++)this.elements[i]=e[i+t];return this}toArray(e=[],t=0){let i=this.elements;return e[t]=i[0],e[t+1]=i[1],e[t+2]=i[2],e[t+3]=i[3],e[t+4]=i[4],e[t+5]=i[5],e[t+6]=i[6],e[t+7]=i[7],e[t+8]=i[8],e}clone(){return new this.constructor().fromArray(this.elements)}},vu=new Ue,Jp=new Ue().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),jp=new Ue().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function sy(){let n={enabled:!0,workingColorSpace:Ao,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===st&&(s.r=Pi(s.r),s.g=Pi(s.g),s.b=Pi(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===st&&(s.r=_r(s.r),s.g=_r(s.g),s.b=_r(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===Fi?Ro:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},e=[.64,.33,.3,.6,.15,.06],t=[.2126,.7152,.0722],i=[.3127,.329];return n.define({[Ao]:{primaries:e,whitePoint:i,transfer:Ro,toXYZ:Jp,fromXYZ:jp,luminanceCoefficients:t,workingColorSpaceConfig:{unpackColorSpace:Xt},outputColorSpaceConfig:{drawingBufferColorSpace:Xt}},[Xt]:{primaries:e,whitePoint:i,transfer:st,toXYZ:Jp,fromXYZ:jp,luminanceCoefficients:t,outputColorSpaceConfig:{drawingBufferColorSpace:Xt}}}),n}var Ze=sy();function Pi(n){return n<.04045?n*.0773993808:Math.pow(n*.9478672986+.0521327014,2.4)}function _r(n){return n<.0031308?n*12.92:1.055*Math.pow(n,.41666)-.055}var nr,Pl=class{static getDataURL(e,t="image/png"){if(/^data:/i.test(e.src)||typeof HTMLCanvasElement>"u")return e.src;let i;if(e instanceof HTMLCanvasElement)i=e;else{nr===void 0&&(nr=Co("canvas")),nr.width=e.width,nr.height=e.height;let s=nr.getContext("2d");e instanceof ImageData?s.putImageData(e,0,0):s.drawImage(e,0,0,e.width,e.height),i=nr}return i.toDataURL(t)}static sRGBToLinear(e){if(typeof HTMLImageElement<"u"&&e instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&e instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&e instanceof ImageBitmap){let t=Co("canvas");t.width=e.width,t.height=e.height;let i=t.getContext("2d");i.drawImage(e,0,0,e.width,e.height);let s=i.getImageData(0,0,e.width,e.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=Pi(r[o]/255)*255;return i.putImageData(s,0,0),t}else if(e.data){let t=e.data.slice(0);for(let i=0;i<t.length;i++)t instanceof Uint8Array||t instanceof Uint8ClampedArray?t[i]=Math.floor(Pi(t[i]/255)*255):t[i]=Pi(t[i]);return{data:t,width:e.width,height:e.height}}else return Ce("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),e}},ry=0,Mr=class{constructor(e=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:ry++}),this.uuid=hs(),this.data=e,this.dataReady=!0,this.version=0}getSize(e){let t=this.data;return typeof HTMLVideoElement<"u"&&t instanceof HTMLVideoElement?e.set(t.videoWidth,t.videoHeight,0):typeof VideoFrame<"u"&&t instanceof VideoFrame?e.set(t.displayWidth,t.displayHeight,0):t!==null?e.set(t.width||0,t.height||0,t.depth||0):e.set(0,0,0),e}set needsUpdate(e){e===!0&&this.version++}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.images[this.uuid]!==void 0)return e.images[this.uuid];let i={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(yu(s[o].image)):r.push(yu(s[o]))}else r=yu(s);i.url=r}return t||(e.images[this.uuid]=i),i}};function yu(n){return typeof HTMLImageElement<"u"&&n instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&n instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&n instanceof ImageBitmap?Pl.getDataURL(n):n.data?{data:Array.from(n.data),width:n.width,height:n.height,type:n.data.constructor.name}:(Ce("Texture: Unable to serialize Texture."),{})}var oy=0,xu=new A,qt=class n extends Kn{constructor(e=n.DEFAULT_IMAGE,t=n.DEFAULT_MAPPING,i=ci,s=ci,r=hn,o=Ui,a=ni,l=yn,c=n.DEFAULT_ANISOTROPY,h=Fi){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:oy++}),this.uuid=hs(),this.name="",this.source=new Mr(e),this.mipmaps=[],this.mapping=t,this.channel=0,this.wrapS=i,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new Ee(0,0),this.repeat=new Ee(1,1),this.center=new Ee(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new Ue,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(e&&e.depth&&e.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(xu).x}get height(){return this.source.getSize(xu).y}get depth(){return this.source.getSize(xu).z}get image(){return this.source.data}set image(e){this.source.data=e}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(e){return this.name=e.name,this.source=e.source,this.mipmaps=e.mipmaps.slice(0),this.mapping=e.mapping,this.channel=e.channel,this.wrapS=e.wrapS,this.wrapT=e.wrapT,this.magFilter=e.magFilter,this.minFilter=e.minFilter,this.anisotropy=e.anisotropy,this.format=e.format,this.internalFormat=e.internalFormat,this.type=e.type,this.normalized=e.normalized,this.offset.copy(e.offset),this.repeat.copy(e.repeat),this.center.copy(e.center),this.rotation=e.rotation,this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrix.copy(e.matrix),this.generateMipmaps=e.generateMipmaps,this.mipmapsAutoUpdate=e.mipmapsAutoUpdate,this.premultiplyAlpha=e.premultiplyAlpha,this.flipY=e.flipY,this.unpackAlignment=e.unpackAlignment,this.colorSpace=e.colorSpace,this.renderTarget=e.renderTarget,this.isRenderTargetTexture=e.isRenderTargetTexture,this.isPMREMTexture=e.isPMREMTexture,this.isArrayTexture=e.isArrayTexture,this.userData=JSON.parse(JSON.stringify(e.userData)),this.needsUpdate=!0,this}setValues(e){for(let t in e){let i=e[t];if(i===void 0){Ce(`Texture.setValues(): parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){Ce(`Texture.setValues(): property '${t}' does not exist.`);continue}s&&i&&s.isVector2&&i.isVector2||s&&i&&s.isVector3&&i.isVector3||s&&i&&s.isMatrix3&&i.isMatrix3?s.copy(i):this[t]=i}}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.textures[this.uuid]!==void 0)return e.textures[this.uuid];let i={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(e).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(i.userData=this.userData),t||(e.textures[this.uuid]=i),i}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(e){if(this.mapping!==cd)return e;if(e.applyMatrix3(this.matrix),e.x<0||e.x>1)switch(this.wrapS){case yr:e.x=e.x-Math.floor(e.x);break;case ci:e.x=e.x<0?0:1;break;case Rl:Math.abs(Math.floor(e.x)%2)===1?e.x=Math.ceil(e.x)-e.x:e.x=e.x-Math.floor(e.x);break}if(e.y<0||e.y>1)switch(this.wrapT){case yr:e.y=e.y-Math.floor(e.y);break;case ci:e.y=e.y<0?0:1;break;case Rl:Math.abs(Math.floor(e.y)%2)===1?e.y=Math.ceil(e.y)-e.y:e.y=e.y-Math.floor(e.y);break}return this.flipY&&(e.y=1-e.y),e}set needsUpdate(e){e===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(e){e===!0&&this.pmremVersion++}};qt.DEFAULT_IMAGE=null;qt.DEFAULT_MAPPING=cd;qt.DEFAULT_ANISOTROPY=1;var tt=class{static{this.prototype.isVector4=!0}constructor(e=0,t=0,i=0,s=1){this.x=e,this.y=t,this.z=i,this.w=s}get width(){return this.z}set width(e){this.z=e}get height(){return this.w}set height(e){this.w=e}set(e,t,i,s){return this.x=e,this.y=t,this.z=i,this.w=s,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this.w=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setW(e){return this.w=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;case 3:this.w=t;break;default:throw new Error("THREE.Vector4: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this.w=e.w!==void 0?e.w:1,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this.w+=e.w,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this.w+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this.w=e.w+t.w,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this.w+=e.w*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this.w-=e.w,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this.w-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this.w=e.w-t.w,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this.w*=e.w,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this.w*=e,this}applyMatrix4(e){let t=this.x,i=this.y,s=this.z,r=this.w,o=e.elements;return this.x=o[0]*t+o[4]*i+o[8]*s+o[12]*r,this.y=o[1]*t+o[5]*i+o[9]*s+o[13]*r,this.z=o[2]*t+o[6]*i+o[10]*s+o[14]*r,this.w=o[3]*t+o[7]*i+o[11]*s+o[15]*r,this}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this.w/=e.w,this}divideScalar(e){return this.multiplyScalar(1/e)}setAxisAngleFromQuaternion(e){this.w=2*Math.acos(e.w);let t=Math.sqrt(1-e.w*e.w);return t<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=e.x/t,this.y=e.y/t,this.z=e.z/t),this}setAxisAngleFromRotationMatrix(e){let t,i,s,r,l=e.elements,c=l[0],h=l[4],f=l[8],d=l[1],u=l[5],m=l[9],y=l[2],p=l[6],g=l[10];if(Math.abs(h-d)<.01&&Math.abs(f-y)<.01&&Math.abs(m-p)<.01){if(Math.abs(h+d)<.1&&Math.abs(f+y)<.1&&Math.abs(m+p)<.1&&Math.abs(c+u+g-3)<.1)return this.set(1,0,0,0),this;t=Math.PI;let w=(c+1)/2,b=(u+1)/2,C=(g+1)/2,R=(h+d)/4,_=(f+y)/4,E=(m+p)/4;return w>b&&w>C?w<.01?(i=0,s=.707106781,r=.707106781):(i=Math.sqrt(w),s=R/i,r=_/i):b>C?b<.01?(i=.707106781,s=0,r=.707106781):(s=Math.sqrt(b),i=R/s,r=E/s):C<.01?(i=.707106781,s=.707106781,r=0):(r=Math.sqrt(C),i=_/r,s=E/r),this.set(i,s,r,t),this}let M=Math.sqrt((p-m)*(p-m)+(f-y)*(f-y)+(d-h)*(d-h));return Math.abs(M)<.001&&(M=1),this.x=(p-m)/M,this.y=(f-y)/M,this.z=(d-h)/M,this.w=Math.acos((c+u+g-1)/2),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this.w=t[15],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this.w=Math.min(this.w,e.w),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this.w=Math.max(this.w,e.w),this}clamp(e,t){return this.x=ke(this.x,e.x,t.x),this.y=ke(this.y,e.y,t.y),this.z=ke(this.z,e.z,t.z),this.w=ke(this.w,e.w,t.w),this}clampScalar(e,t){return this.x=ke(this.x,e,t),this.y=ke(this.y,e,t),this.z=ke(this.z,e,t),this.w=ke(this.w,e,t),this}clampLength(e,t){let i=this.length();return this.divideScalar(i||1).multiplyScalar(ke(i,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z+this.w*e.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this.w+=(e.w-this.w)*t,this}lerpVectors(e,t,i){return this.x=e.x+(t.x-e.x)*i,this.y=e.y+(t.y-e.y)*i,this.z=e.z+(t.z-e.z)*i,this.w=e.w+(t.w-e.w)*i,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z&&e.w===this.w}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this.w=e[t+3],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e[t+3]=this.w,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this.w=e.getW(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Il=class extends Kn{constructor(e=1,t=1,i={}){super(),i=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:hn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},i),this.isRenderTarget=!0,this.width=e,this.height=t,this.depth=i.depth,this.scissor=new tt(0,0,e,t),this.scissorTest=!1,this.viewport=new tt(0,0,e,t),this.textures=[];let s=i.count;for(let r=0;r<s;r++)this.textures[r]=new qt({width:e,height:t,depth:i.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(i),this.depthBuffer=i.depthBuffer,this.stencilBuffer=i.stencilBuffer,this.resolveColorBuffer=i.resolveColorBuffer,this.resolveDepthBuffer=i.resolveDepthBuffer,this.resolveStencilBuffer=i.resolveStencilBuffer,this.storeMultisampledColorBuffer=i.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=i.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=i.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=i.depthTexture,this.samples=i.samples,this.multiview=i.multiview,this.useArrayDepthTexture=i.useArrayDepthTexture}_setTextureOptions(e={}){let t={minFilter:hn,generateMipmaps:!1,flipY:!1,internalFormat:null};e.mapping!==void 0&&(t.mapping=e.mapping),e.wrapS!==void 0&&(t.wrapS=e.wrapS),e.wrapT!==void 0&&(t.wrapT=e.wrapT),e.wrapR!==void 0&&(t.wrapR=e.wrapR),e.magFilter!==void 0&&(t.magFilter=e.magFilter),e.minFilter!==void 0&&(t.minFilter=e.minFilter),e.format!==void 0&&(t.format=e.format),e.type!==void 0&&(t.type=e.type),e.anisotropy!==void 0&&(t.anisotropy=e.anisotropy),e.colorSpace!==void 0&&(t.colorSpace=e.colorSpace),e.flipY!==void 0&&(t.flipY=e.flipY),e.generateMipmaps!==void 0&&(t.generateMipmaps=e.generateMipmaps),e.mipmapsAutoUpdate!==void 0&&(t.mipmapsAutoUpdate=e.mipmapsAutoUpdate),e.internalFormat!==void 0&&(t.internalFormat=e.internalFormat);for(let i=0;i<this.textures.length;i++)this.textures[i].setValues(t)}get texture(){return this.textures[0]}set texture(e){this.textures[0]=e}set depthTexture(e){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),e!==null&&e.renderTarget===null&&(e.renderTarget=this),this._depthTexture=e}get depthTexture(){return this._depthTexture}setSize(e,t,i=1){if(this.width!==e||this.height!==t||this.depth!==i){this.width=e,this.height=t,this.depth=i;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=e,this.textures[s].image.height=t,this.textures[s].image.depth=i,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,e,t),this.scissor.set(0,0,e,t)}clone(){return new this.constructor().copy(this)}copy(e){this.width=e.width,this.height=e.height,this.depth=e.depth,this.scissor.copy(e.scissor),this.scissorTest=e.scissorTest,this.viewport.copy(e.viewport),this.textures.length=0;for(let t=0,i=e.textures.length;t<i;t++){this.textures[t]=e.textures[t].clone(),this.textures[t].isRenderTargetTexture=!0,this.textures[t].renderTarget=this;let s=Object.assign({},e.textures[t].image);this.textures[t].source=new Mr(s)}if(this.depthBuffer=e.depthBuffer,this.stencilBuffer=e.stencilBuffer,this.resolveColorBuffer=e.resolveColorBuffer,this.resolveDepthBuffer=e.resolveDepthBuffer,this.resolveStencilBuffer=e.resolveStencilBuffer,this.storeMultisampledColorBuffer=e.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=e.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=e.storeMultisampledStencilBuffer,e.depthTexture!==null)if(e.depthTexture.renderTarget===e){let t=e.depthTexture.clone();t.renderTarget=null,this.depthTexture=t}else this.depthTexture=e.depthTexture;else this.depthTexture=null;return this.samples=e.samples,this.multiview=e.multiview,this.useArrayDepthTexture=e.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},un=class extends Il{constructor(e=1,t=1,i={}){super(e,t,i),this.isWebGLRenderTarget=!0}},Io=class extends qt{constructor(e=null,t=1,i=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:e,width:t,height:i,depth:s},this.magFilter=zt,this.minFilter=zt,this.wrapR=ci,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}addLayerUpdate(e){this.layerUpdates.add(e)}clearLayerUpdates(){this.layerUpdates.clear()}};var Ll=class extends qt{constructor(e=null,t=1,i=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:e,width:t,height:i,depth:s},this.magFilter=zt,this.minFilter=zt,this.wrapR=ci,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}};var Ke=class n{static{this.prototype.isMatrix4=!0}constructor(e,t,i,s,r,o,a,l,c,h,f,d,u,m,y,p){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],e!==void 0&&this.set(e,t,i,s,r,o,a,l,c,h,f,d,u,m,y,p)}set(e,t,i,s,r,o,a,l,c,h,f,d,u,m,y,p){let g=this.elements;return g[0]=e,g[4]=t,g[8]=i,g[12]=s,g[1]=r,g[5]=o,g[9]=a,g[13]=l,g[2]=c,g[6]=h,g[10]=f,g[14]=d,g[3]=u,g[7]=m,g[11]=y,g[15]=p,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new n().fromArray(this.elements)}copy(e){let t=this.elements,i=e.elements;return t[0]=i[0],t[1]=i[1],t[2]=i[2],t[3]=i[3],t[4]=i[4],t[5]=i[5],t[6]=i[6],t[7]=i[7],t[8]=i[8],t[9]=i[9],t[10]=i[10],t[11]=i[11],t[12]=i[12],t[13]=i[13],t[14]=i[14],t[15]=i[15],this}copyPosition(e){let t=this.elements,i=e.elements;return t[12]=i[12],t[13]=i[13],t[14]=i[14],this}setFromMatrix3(e){let t=e.elements;return this.set(t[0],t[3],t[6],0,t[1],t[4],t[7],0,t[2],t[5],t[8],0,0,0,0,1),this}extractBasis(e,t,i){return this.determinantAffine()===0?(e.set(1,0,0),t.set(0,1,0),i.set(0,0,1),this):(e.setFromMatrixColumn(this,0),t.setFromMatrixColumn(this,1),i.setFromMatrixColumn(this,2),this)}makeBasis(e,t,i){return this.set(e.x,t.x,i.x,0,e.y,t.y,i.y,0,e.z,t.z,i.z,0,0,0,0,1),this}extractRotation(e){if(e.determinantAffine()===0)return this.identity();let t=this.elements,i=e.elements,s=1/ir.setFromMatrixColumn(e,0).length(),r=1/ir.setFromMatrixColumn(e,1).length(),o=1/ir.setFromMatrixColumn(e,2).length();return t[0]=i[0]*s,t[1]=i[1]*s,t[2]=i[2]*s,t[3]=0,t[4]=i[4]*r,t[5]=i[5]*r,t[6]=i[6]*r,t[7]=0,t[8]=i[8]*o,t[9]=i[9]*o,t[10]=i[10]*o,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromEuler(e){let t=this.elements,i=e.x,s=e.y,r=e.z,o=Math.cos(i),a=Math.sin(i),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),f=Math.sin(r);if(e.order==="XYZ"){let d=o*h,u=o*f,m=a*h,y=a*f;t[0]=l*h,t[4]=-l*f,t[8]=c,t[1]=u+m*c,t[5]=d-y*c,t[9]=-a*l,t[2]=y-d*c,t[6]=m+u*c,t[10]=o*l}else if(e.order==="YXZ"){let d=l*h,u=l*f,m=c*h,y=c*f;t[0]=d+y*a,t[4]=m*a-u,t[8]=o*c,t[1]=o*f,t[5]=o*h,t[9]=-a,t[2]=u*a-m,t[6]=y+d*a,t[10]=o*l}else if(e.order==="ZXY"){let d=l*h,u=l*f,m=c*h,y=c*f;t[0]=d-y*a,t[4]=-o*f,t[8]=m+u*a,t[1]=u+m*a,t[5]=o*h,t[9]=y-d*a,t[2]=-o*c,t[6]=a,t[10]=o*l}else if(e.order==="ZYX"){let d=o*h,u=o*f,m=a*h,y=a*f;t[0]=l*h,t[4]=m*c-u,t[8]=d*c+y,t[1]=l*f,t[5]=y*c+d,t[9]=u*c-m,t[2]=-c,t[6]=a*l,t[10]=o*l}else if(e.order==="YZX"){let d=o*l,u=o*c,m=a*l,y=a*c;t[0]=l*h,t[4]=y-d*f,t[8]=m*f+u,t[1]=f,t[5]=o*h,t[9]=-a*h,t[2]=-c*h,t[6]=u*f+m,t[10]=d-y*f}else if(e.order==="XZY"){let d=o*l,u=o*c,m=a*l,y=a*c;t[0]=l*h,t[4]=-f,t[8]=c*h,t[1]=d*f+y,t[5]=o*h,t[9]=u*f-m,t[2]=m*f-u,t[6]=a*h,t[10]=y*f+d}return t[3]=0,t[7]=0,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromQuaternion(e){return this.compose(ay,e,ly)}lookAt(e,t,i){let s=this.elements;return En.subVectors(e,t),En.lengthSq()===0&&(En.z=1),En.normalize(),Zi.crossVectors(i,En),Zi.lengthSq()===0&&(Math.abs(i.z)===1?En.x+=1e-4:En.z+=1e-4,En.normalize(),Zi.crossVectors(i,En)),Zi.normalize(),$a.crossVectors(En,Zi),s[0]=Zi.x,s[4]=$a.x,s[8]=En.x,s[1]=Zi.y,s[5]=$a.y,s[9]=En.y,s[2]=Zi.z,s[6]=$a.z,s[10]=En.z,this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let i=e.elements,s=t.elements,r=this.elements,o=i[0],a=i[4],l=i[8],c=i[12],h=i[1],f=i[5],d=i[9],u=i[13],m=i[2],y=i[6],p=i[10],g=i[14],M=i[3],w=i[7],b=i[11],C=i[15],R=s[0],_=s[4],E=s[8],k=s[12],D=s[1],U=s[5],z=s[9],H=s[13],L=s[2],q=s[6],J=s[10],G=s[14],ne=s[3],X=s[7],Q=s[11],ee=s[15];return r[0]=o*R+a*D+l*L+c*ne,r[4]=o*_+a*U+l*q+c*X,r[8]=o*E+a*z+l*J+c*Q,r[12]=o*k+a*H+l*G+c*ee,r[1]=h*R+f*D+d*L+u*ne,r[5]=h*_+f*U+d*q+u*X,r[9]=h*E+f*z+d*J+u*Q,r[13]=h*k+f*H+d*G+u*ee,r[2]=m*R+y*D+p*L+g*ne,r[6]=m*_+y*U+p*q+g*X,r[10]=m*E+y*z+p*J+g*Q,r[14]=m*k+y*H+p*G+g*ee,r[3]=M*R+w*D+b*L+C*ne,r[7]=M*_+w*U+b*q+C*X,r[11]=M*E+w*z+b*J+C*Q,r[15]=M*k+w*H+b*G+C*ee,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[4]*=e,t[8]*=e,t[12]*=e,t[1]*=e,t[5]*=e,t[9]*=e,t[13]*=e,t[2]*=e,t[6]*=e,t[10]*=e,t[14]*=e,t[3]*=e,t[7]*=e,t[11]*=e,t[15]*=e,this}determinant(){let e=this.elements,t=e[0],i=e[4],s=e[8],r=e[12],o=e[1],a=e[5],l=e[9],c=e[13],h=e[2],f=e[6],d=e[10],u=e[14],m=e[3],y=e[7],p=e[11],g=e[15],M=l*u-c*d,w=a*u-c*f,b=a*d-l*f,C=o*u-c*h,R=o*d-l*h,_=o*f-a*h;return t*(y*M-p*w+g*b)-i*(m*M-p*C+g*R)+s*(m*w-y*C+g*_)-r*(m*b-y*R+p*_)}determinantAffine(){let e=this.elements,t=e[0],i=e[4],s=e[8],r=e[1],o=e[5],a=e[9],l=e[2],c=e[6],h=e[10];return t*(o*h-a*c)-i*(r*h-a*l)+s*(r*c-o*l)}transpose(){let e=this.elements,t;return t=e[1],e[1]=e[4],e[4]=t,t=e[2],e[2]=e[8],e[8]=t,t=e[6],e[6]=e[9],e[9]=t,t=e[3],e[3]=e[12],e[12]=t,t=e[7],e[7]=e[13],e[13]=t,t=e[11],e[11]=e[14],e[14]=t,this}setPosition(e,t,i){let s=this.elements;return e.isVector3?(s[12]=e.x,s[13]=e.y,s[14]=e.z):(s[12]=e,s[13]=t,s[14]=i),this}invert(){let e=this.elements,t=e[0],i=e[1],s=e[2],r=e[3],o=e[4],a=e[5],l=e[6],c=e[7],h=e[8],f=e[9],d=e[10],u=e[11],m=e[12],y=e[13],p=e[14],g=e[15],M=t*a-i*o,w=t*l-s*o,b=t*c-r*o,C=i*l-s*a,R=i*c-r*a,_=s*c-r*l,E=h*y-f*m,k=h*p-d*m,D=h*g-u*m,U=f*p-d*y,z=f*g-u*y,H=d*g-u*p,L=M*H-w*z+b*U+C*D-R*k+_*E;if(L===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let q=1/L;return e[0]=(a*H-l*z+c*U)*q,e[1]=(s*z-i*H-r*U)*q,e[2]=(y*_-p*R+g*C)*q,e[3]=(d*R-f*_-u*C)*q,e[4]=(l*D-o*H-c*k)*q,e[5]=(t*H-s*D+r*k)*q,e[6]=(p*b-m*_-g*w)*q,e[7]=(h*_-d*b+u*w)*q,e[8]=(o*z-a*D+c*E)*q,e[9]=(i*D-t*z-r*E)*q,e[10]=(m*R-y*b+g*M)*q,e[11]=(f*b-h*R-u*M)*q,e[12]=(a*k-o*U-l*E)*q,e[13]=(t*U-i*k+s*E)*q,e[14]=(y*w-m*C-p*M)*q,e[15]=(h*C-f*w+d*M)*q,this}scale(e){let t=this.elements,i=e.x,s=e.y,r=e.z;return t[0]*=i,t[4]*=s,t[8]*=r,t[1]*=i,t[5]*=s,t[9]*=r,t[2]*=i,t[6]*=s,t[10]*=r,t[3]*=i,t[7]*=s,t[11]*=r,this}getMaxScaleOnAxis(){let e=this.elements,t=e[0]*e[0]+e[1]*e[1]+e[2]*e[2],i=e[4]*e[4]+e[5]*e[5]+e[6]*e[6],s=e[8]*e[8]+e[9]*e[9]+e[10]*e[10];return Math.sqrt(Math.max(t,i,s))}makeTranslation(e,t,i){return e.isVector3?this.set(1,0,0,e.x,0,1,0,e.y,0,0,1,e.z,0,0,0,1):this.set(1,0,0,e,0,1,0,t,0,0,1,i,0,0,0,1),this}makeRotationX(e){let t=Math.cos(e),i=Math.sin(e);return this.set(1,0,0,0,0,t,-i,0,0,i,t,0,0,0,0,1),this}makeRotationY(e){let t=Math.cos(e),i=Math.sin(e);return this.set(t,0,i,0,0,1,0,0,-i,0,t,0,0,0,0,1),this}makeRotationZ(e){let t=Math.cos(e),i=Math.sin(e);return this.set(t,-i,0,0,i,t,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(e,t){let i=Math.cos(t),s=Math.sin(t),r=1-i,o=e.x,a=e.y,l=e.z,c=r*o,h=r*a;return this.set(c*o+i,c*a-s*l,c*l+s*a,0,c*a+s*l,h*a+i,h*l-s*o,0,c*l-s*a,h*l+s*o,r*l*l+i,0,0,0,0,1),this}makeScale(e,t,i){return this.set(e,0,0,0,0,t,0,0,0,0,i,0,0,0,0,1),this}makeShear(e,t,i,s,r,o){return this.set(1,i,r,0,e,1,o,0,t,s,1,0,0,0,0,1),this}compose(e,t,i){let s=this.elements,r=t._x,o=t._y,a=t._z,l=t._w,c=r+r,h=o+o,f=a+a,d=r*c,u=r*h,m=r*f,y=o*h,p=o*f,g=a*f,M=l*c,w=l*h,b=l*f,C=i.x,R=i.y,_=i.z;return s[0]=(1-(y+g))*C,s[1]=(u+b)*C,s[2]=(m-w)*C,s[3]=0,s[4]=(u-b)*R,s[5]=(1-(d+g))*R,s[6]=(p+M)*R,s[7]=0,s[8]=(m+w)*_,s[9]=(p-M)*_,s[10]=(1-(d+y))*_,s[11]=0,s[12]=e.x,s[13]=e.y,s[14]=e.z,s[15]=1,this}decompose(e,t,i){let s=this.elements;e.x=s[12],e.y=s[13],e.z=s[14];let r=this.determinantAffine();if(r===0)return i.set(1,1,1),t.identity(),this;let o=ir.set(s[0],s[1],s[2]).length(),a=ir.set(s[4],s[5],s[6]).length(),l=ir.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Yn.copy(this);let c=1/o,h=1/a,f=1/l;return Yn.elements[0]*=c,Yn.elements[1]*=c,Yn.elements[2]*=c,Yn.elements[4]*=h,Yn.elements[5]*=h,Yn.elements[6]*=h,Yn.elements[8]*=f,Yn.elements[9]*=f,Yn.elements[10]*=f,t.setFromRotationMatrix(Yn),i.x=o,i.y=a,i.z=l,this}makePerspective(e,t,i,s,r,o,a=Bn,l=!1){let c=this.elements,h=2*r/(t-e),f=2*r/(i-s),d=(t+e)/(t-e),u=(i+s)/(i-s),m,y;if(l)m=r/(o-r),y=o*r/(o-r);else if(a===Bn)m=-(o+r)/(o-r),y=-2*o*r/(o-r);else if(a===xr)m=-o/(o-r),y=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=d,c[12]=0,c[1]=0,c[5]=f,c[9]=u,c[13]=0,c[2]=0,c[6]=0,c[10]=m,c[14]=y,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(e,t,i,s,r,o,a=Bn,l=!1){let c=this.elements,h=2/(t-e),f=2/(i-s),d=-(t+e)/(t-e),u=-(i+s)/(i-s),m,y;if(l)m=1/(o-r),y=o/(o-r);else if(a===Bn)m=-2/(o-r),y=-(o+r)/(o-r);else if(a===xr)m=-1/(o-r),y=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=0,c[12]=d,c[1]=0,c[5]=f,c[9]=0,c[13]=u,c[2]=0,c[6]=0,c[10]=m,c[14]=y,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(e){let t=this.elements,i=e.elements;for(let s=0;s<16;s++)if(t[s]!==i[s])return!1;return!0}fromArray(e,t=0){for(let i=0;i<16;i++)this.elements[i]=e[i+t];return this}toArray(e=[],t=0){let i=this.elements;return e[t]=i[0],e[t+1]=i[1],e[t+2]=i[2],e[t+3]=i[3],e[t+4]=i[4],e[t+5]=i[5],e[t+6]=i[6],e[t+7]=i[7],e[t+8]=i[8],e[t+9]=i[9],e[t+10]=i[10],e[t+11]=i[11],e[t+12]=i[12],e[t+13]=i[13],e[t+14]=i[14],e[t+15]=i[15],e}},ir=new A,Yn=new Ke,ay=new A(0,0,0),ly=new A(1,1,1),Zi=new A,$a=new A,En=new A,Qp=new Ke,em=new Rn,hi=class n{constructor(e=0,t=0,i=0,s=n.DEFAULT_ORDER){this.isEuler=!0,this._x=e,this._y=t,this._z=i,this._order=s}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get order(){return this._order}set order(e){this._order=e,this._onChangeCallback()}set(e,t,i,s=this._order){return this._x=e,this._y=t,this._z=i,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(e){return this._x=e._x,this._y=e._y,this._z=e._z,this._order=e._order,this._onChangeCallback(),this}setFromRotationMatrix(e,t=this._order,i=!0){let s=e.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],h=s[9],f=s[2],d=s[6],u=s[10];switch(t){case"XYZ":this._y=Math.asin(ke(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-h,u),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(d,c),this._z=0);break;case"YXZ":this._x=Math.asin(-ke(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(a,u),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-f,r),this._z=0);break;case"ZXY":this._x=Math.asin(ke(d,-1,1)),Math.abs(d)<.9999999?(this._y=Math.atan2(-f,u),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-ke(f,-1,1)),Math.abs(f)<.9999999?(this._x=Math.atan2(d,u),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(ke(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-f,r)):(this._x=0,this._y=Math.atan2(a,u));break;case"XZY":this._z=Math.asin(-ke(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(d,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-h,u),this._y=0);break;default:Ce("Euler: .setFromRotationMatrix() encountered an unknown order: "+t)}return this._order=t,i===!0&&this._onChangeCallback(),this}setFromQuaternion(e,t,i){return Qp.makeRotationFromQuaternion(e),this.setFromRotationMatrix(Qp,t,i)}setFromVector3(e,t=this._order){return this.set(e.x,e.y,e.z,t)}reorder(e){return em.setFromEuler(this),this.setFromQuaternion(em,e)}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._order===this._order}fromArray(e){return this._x=e[0],this._y=e[1],this._z=e[2],e[3]!==void 0&&(this._order=e[3]),this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._order,e}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};hi.DEFAULT_ORDER="XYZ";var wr=class{constructor(){this.mask=1}set(e){this.mask=(1<<e|0)>>>0}enable(e){this.mask|=1<<e|0}enableAll(){this.mask=-1}toggle(e){this.mask^=1<<e|0}disable(e){this.mask&=~(1<<e|0)}disableAll(){this.mask=0}test(e){return(this.mask&e.mask)!==0}isEnabled(e){return(this.mask&(1<<e|0))!==0}},cy=0,tm=new A,sr=new Rn,Ei=new Ke,Za=new A,_o=new A,hy=new A,uy=new Rn,nm=new A(1,0,0),im=new A(0,1,0),sm=new A(0,0,1),rm={type:"added"},dy={type:"removed"},rr={type:"childadded",child:null},Su={type:"childremoved",child:null},Yt=class n extends Kn{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:cy++}),this.uuid=hs(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=n.DEFAULT_UP.clone();let e=new A,t=new hi,i=new Rn,s=new A(1,1,1);function r(){i.setFromEuler(t,!1)}function o(){t.setFromQuaternion(i,void 0,!1)}t._onChange(r),i._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:e},rotation:{configurable:!0,enumerable:!0,value:t},quaternion:{configurable:!0,enumerable:!0,value:i},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new Ke},normalMatrix:{value:new Ue}}),this.matrix=new Ke,this.matrixWorld=new Ke,this.matrixAutoUpdate=n.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=n.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new wr,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(e){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(e),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(e){return this.quaternion.premultiply(e),this}setRotationFromAxisAngle(e,t){this.quaternion.setFromAxisAngle(e,t)}setRotationFromEuler(e){this.quaternion.setFromEuler(e,!0)}setRotationFromMatrix(e){this.quaternion.setFromRotationMatrix(e)}setRotationFromQuaternion(e){this.quaternion.copy(e)}rotateOnAxis(e,t){return sr.setFromAxisAngle(e,t),this.quaternion.multiply(sr),this}rotateOnWorldAxis(e,t){return sr.setFromAxisAngle(e,t),this.quaternion.premultiply(sr),this}rotateX(e){return this.rotateOnAxis(nm,e)}rotateY(e){return this.rotateOnAxis(im,e)}rotateZ(e){return this.rotateOnAxis(sm,e)}translateOnAxis(e,t){return tm.copy(e).applyQuaternion(this.quaternion),this.position.add(tm.multiplyScalar(t)),this}translateX(e){return this.translateOnAxis(nm,e)}translateY(e){return this.translateOnAxis(im,e)}translateZ(e){return this.translateOnAxis(sm,e)}localToWorld(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(this.matrixWorld)}worldToLocal(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(Ei.copy(this.matrixWorld).invert())}lookAt(e,t,i){e.isVector3?Za.copy(e):Za.set(e,t,i);let s=this.parent;this.updateWorldMatrix(!0,!1),_o.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?Ei.lookAt(_o,Za,this.up):Ei.lookAt(Za,_o,this.up),this.quaternion.setFromRotationMatrix(Ei),s&&(Ei.extractRotation(s.matrixWorld),sr.setFromRotationMatrix(Ei),this.quaternion.premultiply(sr.invert()))}add(e){if(arguments.length>1){for(let t=0;t<arguments.length;t++)this.add(arguments[t]);return this}return e===this?(De("Object3D.add: object can't be added as a child of itself.",e),this):(e&&e.isObject3D?(e.removeFromParent(),e.parent=this,this.children.push(e),e.dispatchEvent(rm),rr.child=e,this.dispatchEvent(rr),rr.child=null):De("Object3D.add: object not an instance of THREE.Object3D.",e),this)}remove(e){if(arguments.length>1){for(let i=0;i<arguments.length;i++)this.remove(arguments[i]);return this}let t=this.children.indexOf(e);return t!==-1&&(e.parent=null,this.children.splice(t,1),e.dispatchEvent(dy),Su.child=e,this.dispatchEvent(Su),Su.child=null),this}removeFromParent(){let e=this.parent;return e!==null&&e.remove(this),this}clear(){return this.remove(...this.children)}attach(e){return this.updateWorldMatrix(!0,!1),Ei.copy(this.matrixWorld).invert(),e.parent!==null&&(e.parent.updateWorldMatrix(!0,!1),Ei.multiply(e.parent.matrixWorld)),e.applyMatrix4(Ei),e.removeFromParent(),e.parent=this,this.children.push(e),e.updateWorldMatrix(!1,!0),e.dispatchEvent(rm),rr.child=e,this.dispatchEvent(rr),rr.child=null,this}getObjectById(e){return this.getObjectByProperty("id",e)}getObjectByName(e){return this.getObjectByProperty("name",e)}getObjectByProperty(e,t){if(this[e]===t)return this;for(let i=0,s=this.children.length;i<s;i++){let o=this.children[i].getObjectByProperty(e,t);if(o!==void 0)return o}}getObjectsByProperty(e,t,i=[]){this[e]===t&&i.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(e,t,i);return i}getWorldPosition(e){return this.updateWorldMatrix(!0,!1),e.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(_o,e,hy),e}getWorldScale(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(_o,uy,e),e}getWorldDirection(e){this.updateWorldMatrix(!0,!1);let t=this.matrixWorld.elements;return e.set(t[8],t[9],t[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(e){e(this);let t=this.children;for(let i=0,s=t.length;i<s;i++)t[i].traverse(e)}traverseVisible(e){if(this.visible===!1)return;e(this);let t=this.children;for(let i=0,s=t.length;i<s;i++)t[i].traverseVisible(e)}traverseAncestors(e){let t=this.parent;t!==null&&(e(t),t.traverseAncestors(e))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let e=this.pivot;if(e!==null){let t=e.x,i=e.y,s=e.z,r=this.matrix.elements;r[12]+=t-r[0]*t-r[4]*i-r[8]*s,r[13]+=i-r[1]*t-r[5]*i-r[9]*s,r[14]+=s-r[2]*t-r[6]*i-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(e){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||e)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,e=!0);let t=this.children;for(let i=0,s=t.length;i<s;i++)t[i].updateMatrixWorld(e)}updateWorldMatrix(e,t,i=!1){let s=this.parent;if(e===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||i)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,i=!0),t===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,i)}}toJSON(e){let t=e===void 0||typeof e=="string",i={};t&&(e={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},i.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(e),s.indirectTexture=this._indirectTexture.toJSON(e),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(e)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(e)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(e).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(e).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(e.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let f=l[c];r(e.shapes,f)}else r(e.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(e.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(e.materials,this.material[l]));s.material=a}else s.material=r(e.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(e).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(e.animations,l))}}if(t){let a=o(e.geometries),l=o(e.materials),c=o(e.textures),h=o(e.images),f=o(e.shapes),d=o(e.skeletons),u=o(e.animations),m=o(e.nodes);a.length>0&&(i.geometries=a),l.length>0&&(i.materials=l),c.length>0&&(i.textures=c),h.length>0&&(i.images=h),f.length>0&&(i.shapes=f),d.length>0&&(i.skeletons=d),u.length>0&&(i.animations=u),m.length>0&&(i.nodes=m)}return i.object=s,i;function o(a){let l=[];for(let c in a){let h=a[c];delete h.metadata,l.push(h)}return l}}clone(e){return new this.constructor().copy(this,e)}copy(e,t=!0){if(this.name=e.name,this.up.copy(e.up),this.position.copy(e.position),this.rotation.order=e.rotation.order,this.quaternion.copy(e.quaternion),this.scale.copy(e.scale),this.pivot=e.pivot!==null?e.pivot.clone():null,this.matrix.copy(e.matrix),this.matrixWorld.copy(e.matrixWorld),this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrixWorldAutoUpdate=e.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=e.matrixWorldNeedsUpdate,this.layers.mask=e.layers.mask,this.visible=e.visible,this.castShadow=e.castShadow,this.receiveShadow=e.receiveShadow,this.frustumCulled=e.frustumCulled,this.renderOrder=e.renderOrder,this.static=e.static,this.animations=e.animations.slice(),this.userData=JSON.parse(JSON.stringify(e.userData)),t===!0)for(let i=0;i<e.children.length;i++){let s=e.children[i];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};Yt.DEFAULT_UP=new A(0,1,0);Yt.DEFAULT_MATRIX_AUTO_UPDATE=!0;Yt.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var An=class extends Yt{constructor(){super(),this.isGroup=!0,this.type="Group"}},fy={type:"move"},Er=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new An,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new An,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new A,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new A),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new An,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new A,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new A,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(e){return this._targetRay!==null&&this._targetRay.dispatchEvent(e),this._grip!==null&&this._grip.dispatchEvent(e),this._hand!==null&&this._hand.dispatchEvent(e),this}connect(e){if(e&&e.hand){let t=this._hand;if(t)for(let i of e.hand.values())this._getHandJoint(t,i)}return this.dispatchEvent({type:"connected",data:e}),this}disconnect(e){return this.dispatchEvent({type:"disconnected",data:e}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(e,t,i){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(e&&t.session.visibilityState!=="visible-blurred"){if(c&&e.hand){o=!0;for(let y of e.hand.values()){let p=t.getJointPose(y,i),g=this._getHandJoint(c,y);p!==null&&(g.matrix.fromArray(p.transform.matrix),g.matrix.decompose(g.position,g.quaternion,g.scale),g.matrixWorldNeedsUpdate=!0,g.jointRadius=p.radius),g.visible=p!==null}let h=c.joints["index-finger-tip"],f=c.joints["thumb-tip"],d=h.position.distanceTo(f.position),u=.02,m=.005;c.inputState.pinching&&d>u+m?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:e.handedness,target:this})):!c.inputState.pinching&&d<=u-m&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:e.handedness,target:this}))}else l!==null&&e.gripSpace&&(r=t.getPose(e.gripSpace,i),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:e,target:this})));a!==null&&(s=t.getPose(e.targetRaySpace,i),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(fy)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(e,t){if(e.joints[t.jointName]===void 0){let i=new An;i.matrixAutoUpdate=!1,i.visible=!1,e.joints[t.jointName]=i,e.add(i)}return e.joints[t.jointName]}},dg={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Ki={h:0,s:0,l:0},Ka={h:0,s:0,l:0};function bu(n,e,t){return t<0&&(t+=1),t>1&&(t-=1),t<1/6?n+(e-n)*6*t:t<1/2?e:t<2/3?n+(e-n)*6*(2/3-t):n}var Re=class{constructor(e,t,i){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(e,t,i)}set(e,t,i){if(t===void 0&&i===void 0){let s=e;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(e,t,i);return this}setScalar(e){return this.r=e,this.g=e,this.b=e,this}setHex(e,t=Xt){return e=Math.floor(e),this.r=(e>>16&255)/255,this.g=(e>>8&255)/255,this.b=(e&255)/255,Ze.colorSpaceToWorking(this,t),this}setRGB(e,t,i,s=Ze.workingColorSpace){return this.r=e,this.g=t,this.b=i,Ze.colorSpaceToWorking(this,s),this}setHSL(e,t,i,s=Ze.workingColorSpace){if(e=bd(e,1),t=ke(t,0,1),i=ke(i,0,1),t===0)this.r=this.g=this.b=i;else{let r=i<=.5?i*(1+t):i+t-i*t,o=2*i-r;this.r=bu(o,r,e+1/3),this.g=bu(o,r,e),this.b=bu(o,r,e-1/3)}return Ze.colorSpaceToWorking(this,s),this}setStyle(e,t=Xt){function i(r){r!==void 0&&parseFloat(r)<1&&Ce("Color: Alpha component of "+e+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(e)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,t);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,t);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,t);break;default:Ce("Color: Unknown color model "+e)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(e)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,t);if(o===6)return this.setHex(parseInt(r,16),t);Ce("Color: Invalid hex color "+e)}else if(e&&e.length>0)return this.setColorName(e,t);return this}setColorName(e,t=Xt){let i=dg[e.toLowerCase()];return i!==void 0?this.setHex(i,t):Ce("Color: Unknown color "+e),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(e){return this.r=e.r,this.g=e.g,this.b=e.b,this}copySRGBToLinear(e){return this.r=Pi(e.r),this.g=Pi(e.g),this.b=Pi(e.b),this}copyLinearToSRGB(e){return this.r=_r(e.r),this.g=_r(e.g),this.b=_r(e.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(e=Xt){return Ze.workingToColorSpace(nn.copy(this),e),Math.round(ke(nn.r*255,0,255))*65536+Math.round(ke(nn.g*255,0,255))*256+Math.round(ke(nn.b*255,0,255))}getHexString(e=Xt){return("000000"+this.getHex(e).toString(16)).slice(-6)}getHSL(e,t=Ze.workingColorSpace){Ze.workingToColorSpace(nn.copy(this),t);let i=nn.r,s=nn.g,r=nn.b,o=Math.max(i,s,r),a=Math.min(i,s,r),l,c,h=(a+o)/2;if(a===o)l=0,c=0;else{let f=o-a;switch(c=h<=.5?f/(o+a):f/(2-o-a),o){case i:l=(s-r)/f+(s<r?6:0);break;case s:l=(r-i)/f+2;break;case r:l=(i-s)/f+4;break}l/=6}return e.h=l,e.s=c,e.l=h,e}getRGB(e,t=Ze.workingColorSpace){return Ze.workingToColorSpace(nn.copy(this),t),e.r=nn.r,e.g=nn.g,e.b=nn.b,e}getStyle(e=Xt){Ze.workingToColorSpace(nn.copy(this),e);let t=nn.r,i=nn.g,s=nn.b;return e!==Xt?`color(${e} ${t.toFixed(3)} ${i.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(t*255)},${Math.round(i*255)},${Math.round(s*255)})`}offsetHSL(e,t,i){return this.getHSL(Ki),this.setHSL(Ki.h+e,Ki.s+t,Ki.l+i)}add(e){return this.r+=e.r,this.g+=e.g,this.b+=e.b,this}addColors(e,t){return this.r=e.r+t.r,this.g=e.g+t.g,this.b=e.b+t.b,this}addScalar(e){return this.r+=e,this.g+=e,this.b+=e,this}sub(e){return this.r=Math.max(0,this.r-e.r),this.g=Math.max(0,this.g-e.g),this.b=Math.max(0,this.b-e.b),this}multiply(e){return this.r*=e.r,this.g*=e.g,this.b*=e.b,this}multiplyScalar(e){return this.r*=e,this.g*=e,this.b*=e,this}lerp(e,t){return this.r+=(e.r-this.r)*t,this.g+=(e.g-this.g)*t,this.b+=(e.b-this.b)*t,this}lerpColors(e,t,i){return this.r=e.r+(t.r-e.r)*i,this.g=e.g+(t.g-e.g)*i,this.b=e.b+(t.b-e.b)*i,this}lerpHSL(e,t){this.getHSL(Ki),e.getHSL(Ka);let i=Eo(Ki.h,Ka.h,t),s=Eo(Ki.s,Ka.s,t),r=Eo(Ki.l,Ka.l,t);return this.setHSL(i,s,r),this}setFromVector3(e){return this.r=e.x,this.g=e.y,this.b=e.z,this}applyMatrix3(e){let t=this.r,i=this.g,s=this.b,r=e.elements;return this.r=r[0]*t+r[3]*i+r[6]*s,this.g=r[1]*t+r[4]*i+r[7]*s,this.b=r[2]*t+r[5]*i+r[8]*s,this}equals(e){return e.r===this.r&&e.g===this.g&&e.b===this.b}fromArray(e,t=0){return this.r=e[t],this.g=e[t+1],this.b=e[t+2],this}toArray(e=[],t=0){return e[t]=this.r,e[t+1]=this.g,e[t+2]=this.b,e}fromBufferAttribute(e,t){return this.r=e.getX(t),this.g=e.getY(t),this.b=e.getZ(t),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},nn=new Re;Re.NAMES=dg;var Lo=class extends Yt{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new hi,this.environmentIntensity=1,this.environmentRotation=new hi,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(e,t){return super.copy(e,t),this.background=e.background!==null?e.background.clone():null,this.environment=e.environment!==null?e.environment.clone():null,this.fog=e.fog!==null?e.fog.clone():null,this.backgroundBlurriness=e.backgroundBlurriness,this.backgroundIntensity=e.backgroundIntensity,this.backgroundRotation.copy(e.backgroundRotation),this.environmentIntensity=e.environmentIntensity,this.environmentRotation.copy(e.environmentRotation),this.overrideMaterial=e.overrideMaterial!==null?e.overrideMaterial.clone():null,this.matrixAutoUpdate=e.matrixAutoUpdate,this}toJSON(e){let t=super.toJSON(e);return this.fog!==null&&(t.object.fog=this.fog.toJSON()),t.object.backgroundBlurriness=this.backgroundBlurriness,t.object.backgroundIntensity=this.backgroundIntensity,t.object.backgroundRotation=this.backgroundRotation.toArray(),t.object.environmentIntensity=this.environmentIntensity,t.object.environmentRotation=this.environmentRotation.toArray(),t}},$n=new A,Ti=new A,Mu=new A,Ai=new A,or=new A,ar=new A,om=new A,wu=new A,Eu=new A,Tu=new A,Au=new tt,Ru=new tt,Cu=new tt,li=class n{constructor(e=new A,t=new A,i=new A){this.a=e,this.b=t,this.c=i}static getNormal(e,t,i,s){s.subVectors(i,t),$n.subVectors(e,t),s.cross($n);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(e,t,i,s,r){$n.subVectors(s,t),Ti.subVectors(i,t),Mu.subVectors(e,t);let o=$n.dot($n),a=$n.dot(Ti),l=$n.dot(Mu),c=Ti.dot(Ti),h=Ti.dot(Mu),f=o*c-a*a;if(f===0)return r.set(0,0,0),null;let d=1/f,u=(c*l-a*h)*d,m=(o*h-a*l)*d;return r.set(1-u-m,m,u)}static containsPoint(e,t,i,s){return this.getBarycoord(e,t,i,s,Ai)===null?!1:Ai.x>=0&&Ai.y>=0&&Ai.x+Ai.y<=1}static getInterpolation(e,t,i,s,r,o,a,l){return this.getBarycoord(e,t,i,s,Ai)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,Ai.x),l.addScaledVector(o,Ai.y),l.addScaledVector(a,Ai.z),l)}static getInterpolatedAttribute(e,t,i,s,r,o){return Au.setScalar(0),Ru.setScalar(0),Cu.setScalar(0),Au.fromBufferAttribute(e,t),Ru.fromBufferAttribute(e,i),Cu.fromBufferAttribute(e,s),o.setScalar(0),o.addScaledVector(Au,r.x),o.addScaledVector(Ru,r.y),o.addScaledVector(Cu,r.z),o}static isFrontFacing(e,t,i,s){return $n.subVectors(i,t),Ti.subVectors(e,t),$n.cross(Ti).dot(s)<0}set(e,t,i){return this.a.copy(e),this.b.copy(t),this.c.copy(i),this}setFromPointsAndIndices(e,t,i,s){return this.a.copy(e[t]),this.b.copy(e[i]),this.c.copy(e[s]),this}setFromAttributeAndIndices(e,t,i,s){return this.a.fromBufferAttribute(e,t),this.b.fromBufferAttribute(e,i),this.c.fromBufferAttribute(e,s),this}clone(){return new this.constructor().copy(this)}copy(e){return this.a.copy(e.a),this.b.copy(e.b),this.c.copy(e.c),this}getArea(){return $n.subVectors(this.c,this.b),Ti.subVectors(this.a,this.b),$n.cross(Ti).length()*.5}getMidpoint(e){return e.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(e){return n.getNormal(this.a,this.b,this.c,e)}getPlane(e){return e.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(e,t){return n.getBarycoord(e,this.a,this.b,this.c,t)}getInterpolation(e,t,i,s,r){return n.getInterpolation(e,this.a,this.b,this.c,t,i,s,r)}containsPoint(e){return n.containsPoint(e,this.a,this.b,this.c)}isFrontFacing(e){return n.isFrontFacing(this.a,this.b,this.c,e)}intersectsBox(e){return e.intersectsTriangle(this)}closestPointToPoint(e,t){let i=this.a,s=this.b,r=this.c,o,a;or.subVectors(s,i),ar.subVectors(r,i),wu.subVectors(e,i);let l=or.dot(wu),c=ar.dot(wu);if(l<=0&&c<=0)return t.copy(i);Eu.subVectors(e,s);let h=or.dot(Eu),f=ar.dot(Eu);if(h>=0&&f<=h)return t.copy(s);let d=l*f-h*c;if(d<=0&&l>=0&&h<=0&&l-h>0)return o=l/(l-h),t.copy(i).addScaledVector(or,o);Tu.subVectors(e,r);let u=or.dot(Tu),m=ar.dot(Tu);if(m>=0&&u<=m)return t.copy(r);let y=u*c-l*m;if(y<=0&&c>=0&&m<=0)return a=c/(c-m),t.copy(i).addScaledVector(ar,a);let p=h*m-u*f;if(p<=0&&f-h>=0&&u-m>=0)return om.subVectors(r,s),a=(f-h)/(f-h+(u-m)),t.copy(s).addScaledVector(om,a);let g=1/(p+y+d);return o=y*g,a=d*g,t.copy(i).addScaledVector(or,o).addScaledVector(ar,a)}equals(e){return e.a.equals(this.a)&&e.b.equals(this.b)&&e.c.equals(this.c)}},Cn=class{constructor(e=new A(1/0,1/0,1/0),t=new A(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=e,this.max=t}set(e,t){return this.min.copy(e),this.max.copy(t),this}setFromArray(e){this.makeEmpty();for(let t=0,i=e.length;t<i;t+=3)this.expandByPoint(Zn.fromArray(e,t));return this}setFromBufferAttribute(e){this.makeEmpty();for(let t=0,i=e.count;t<i;t++)this.expandByPoint(Zn.fromBufferAttribute(e,t));return this}setFromPoints(e){this.makeEmpty();for(let t=0,i=e.length;t<i;t++)this.expandByPoint(e[t]);return this}setFromCenterAndSize(e,t){let i=Zn.copy(t).multiplyScalar(.5);return this.min.copy(e).sub(i),this.max.copy(e).add(i),this}setFromObject(e,t=!1){return this.makeEmpty(),this.expandByObject(e,t)}clone(){return new this.constructor().copy(this)}copy(e){return this.min.copy(e.min),this.max.copy(e.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(e){return this.isEmpty()?e.set(0,0,0):e.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(e){return this.isEmpty()?e.set(0,0,0):e.subVectors(this.max,this.min)}expandByPoint(e){return this.min.min(e),this.max.max(e),this}expandByVector(e){return this.min.sub(e),this.max.add(e),this}expandByScalar(e){return this.min.addScalar(-e),this.max.addScalar(e),this}expandByObject(e,t=!1){e.updateWorldMatrix(!1,!1);let i=e.geometry;if(i!==void 0){let r=i.getAttribute("position");if(t===!0&&r!==void 0&&e.isInstancedMesh!==!0&&e.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)e.isMesh===!0?e.getVertexPosition(o,Zn):Zn.fromBufferAttribute(r,o),Zn.applyMatrix4(e.matrixWorld),this.expandByPoint(Zn);else e.boundingBox!==void 0?(e.boundingBox===null&&e.computeBoundingBox(),Ja.copy(e.boundingBox)):(i.boundingBox===null&&i.computeBoundingBox(),Ja.copy(i.boundingBox)),Ja.applyMatrix4(e.matrixWorld),this.union(Ja)}let s=e.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],t);return this}containsPoint(e){return e.x>=this.min.x&&e.x<=this.max.x&&e.y>=this.min.y&&e.y<=this.max.y&&e.z>=this.min.z&&e.z<=this.max.z}containsBox(e){return this.min.x<=e.min.x&&e.max.x<=this.max.x&&this.min.y<=e.min.y&&e.max.y<=this.max.y&&this.min.z<=e.min.z&&e.max.z<=this.max.z}getParameter(e,t){return t.set((e.x-this.min.x)/(this.max.x-this.min.x),(e.y-this.min.y)/(this.max.y-this.min.y),(e.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(e){return e.max.x>=this.min.x&&e.min.x<=this.max.x&&e.max.y>=this.min.y&&e.min.y<=this.max.y&&e.max.z>=this.min.z&&e.min.z<=this.max.z}intersectsSphere(e){return this.clampPoint(e.center,Zn),Zn.distanceToSquared(e.center)<=e.radius*e.radius}intersectsPlane(e){let t,i;return e.normal.x>0?(t=e.normal.x*this.min.x,i=e.normal.x*this.max.x):(t=e.normal.x*this.max.x,i=e.normal.x*this.min.x),e.normal.y>0?(t+=e.normal.y*this.min.y,i+=e.normal.y*this.max.y):(t+=e.normal.y*this.max.y,i+=e.normal.y*this.min.y),e.normal.z>0?(t+=e.normal.z*this.min.z,i+=e.normal.z*this.max.z):(t+=e.normal.z*this.max.z,i+=e.normal.z*this.min.z),t<=-e.constant&&i>=-e.constant}intersectsTriangle(e){if(this.isEmpty())return!1;this.getCenter(vo),ja.subVectors(this.max,vo),lr.subVectors(e.a,vo),cr.subVectors(e.b,vo),hr.subVectors(e.c,vo),Ji.subVectors(cr,lr),ji.subVectors(hr,cr),Rs.subVectors(lr,hr);let t=[0,-Ji.z,Ji.y,0,-ji.z,ji.y,0,-Rs.z,Rs.y,Ji.z,0,-Ji.x,ji.z,0,-ji.x,Rs.z,0,-Rs.x,-Ji.y,Ji.x,0,-ji.y,ji.x,0,-Rs.y,Rs.x,0];return!Pu(t,lr,cr,hr,ja)||(t=[1,0,0,0,1,0,0,0,1],!Pu(t,lr,cr,hr,ja))?!1:(Qa.crossVectors(Ji,ji),t=[Qa.x,Qa.y,Qa.z],Pu(t,lr,cr,hr,ja))}clampPoint(e,t){return t.copy(e).clamp(this.min,this.max)}distanceToPoint(e){return this.clampPoint(e,Zn).distanceTo(e)}getBoundingSphere(e){return this.isEmpty()?e.makeEmpty():(this.getCenter(e.center),e.radius=this.getSize(Zn).length()*.5),e}intersect(e){return this.min.max(e.min),this.max.min(e.max),this.isEmpty()&&this.makeEmpty(),this}union(e){return this.min.min(e.min),this.max.max(e.max),this}applyMatrix4(e){return this.isEmpty()?this:(Ri[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(e),Ri[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(e),Ri[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(e),Ri[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(e),Ri[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(e),Ri[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(e),Ri[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(e),Ri[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(e),this.setFromPoints(Ri),this)}translate(e){return this.min.add(e),this.max.add(e),this}equals(e){return e.min.equals(this.min)&&e.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(e){return this.min.fromArray(e.min),this.max.fromArray(e.max),this}},Ri=[new A,new A,new A,new A,new A,new A,new A,new A],Zn=new A,Ja=new Cn,lr=new A,cr=new A,hr=new A,Ji=new A,ji=new A,Rs=new A,vo=new A,ja=new A,Qa=new A,Cs=new A;function Pu(n,e,t,i,s){for(let r=0,o=n.length-3;r<=o;r+=3){Cs.fromArray(n,r);let a=s.x*Math.abs(Cs.x)+s.y*Math.abs(Cs.y)+s.z*Math.abs(Cs.z),l=e.dot(Cs),c=t.dot(Cs),h=i.dot(Cs);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>a)return!1}return!0}var Et=new A,el=new Ee,py=0,Bt=class extends Kn{constructor(e,t,i=!1){if(super(),Array.isArray(e))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:py++}),this.name="",this.array=e,this.itemSize=t,this.count=e!==void 0?e.length/t:0,this.normalized=i,this.usage=xd,this.updateRanges=[],this.gpuType=ei,this.version=0,this._normalizationScale=e!==void 0?kc(e):void 0}onUploadCallback(){}set needsUpdate(e){e===!0&&this.version++}setUsage(e){return this.usage=e,this}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}copy(e){return this.name=e.name,this.array=new e.array.constructor(e.array),this.itemSize=e.itemSize,this.count=e.count,this.normalized=e.normalized,this.usage=e.usage,this.gpuType=e.gpuType,this._normalizationScale=e._normalizationScale,this}copyAt(e,t,i){e*=this.itemSize,i*=t.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[e+s]=t.array[i+s];return this}copyArray(e){return this.array.set(e),this}applyMatrix3(e){if(this.itemSize===2)for(let t=0,i=this.count;t<i;t++)el.fromBufferAttribute(this,t),el.applyMatrix3(e),this.setXY(t,el.x,el.y);else if(this.itemSize===3)for(let t=0,i=this.count;t<i;t++)Et.fromBufferAttribute(this,t),Et.applyMatrix3(e),this.setXYZ(t,Et.x,Et.y,Et.z);return this}applyMatrix4(e){for(let t=0,i=this.count;t<i;t++)Et.fromBufferAttribute(this,t),Et.applyMatrix4(e),this.setXYZ(t,Et.x,Et.y,Et.z);return this}applyNormalMatrix(e){for(let t=0,i=this.count;t<i;t++)Et.fromBufferAttribute(this,t),Et.applyNormalMatrix(e),this.setXYZ(t,Et.x,Et.y,Et.z);return this}transformDirection(e){for(let t=0,i=this.count;t<i;t++)Et.fromBufferAttribute(this,t),Et.transformDirection(e),this.setXYZ(t,Et.x,Et.y,Et.z);return this}set(e,t=0){return this.array.set(e,t),this}getComponent(e,t){let i=this.array[e*this.itemSize+t];return this.normalized&&(i=this._denormalize(i)),i}setComponent(e,t,i){return this.normalized&&(i=this._normalize(i)),this.array[e*this.itemSize+t]=i,this}getX(e){let t=this.array[e*this.itemSize];return this.normalized&&(t=this._denormalize(t)),t}setX(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize]=t,this}getY(e){let t=this.array[e*this.itemSize+1];return this.normalized&&(t=this._denormalize(t)),t}setY(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+1]=t,this}getZ(e){let t=this.array[e*this.itemSize+2];return this.normalized&&(t=this._denormalize(t)),t}setZ(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+2]=t,this}getW(e){let t=this.array[e*this.itemSize+3];return this.normalized&&(t=this._denormalize(t)),t}setW(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+3]=t,this}setXY(e,t,i){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),i=this._normalize(i)),this.array[e+0]=t,this.array[e+1]=i,this}setXYZ(e,t,i,s){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),i=this._normalize(i),s=this._normalize(s)),this.array[e+0]=t,this.array[e+1]=i,this.array[e+2]=s,this}setXYZW(e,t,i,s,r){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),i=this._normalize(i),s=this._normalize(s),r=this._normalize(r)),this.array[e+0]=t,this.array[e+1]=i,this.array[e+2]=s,this.array[e+3]=r,this}onUpload(e){return this.onUploadCallback=e,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let e={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return e.name=this.name,e.usage=this.usage,e.gpuType=this.gpuType,e}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(e){let t=this._normalizationScale;return t!==void 0?Math.max(e/t,-1):wd(e,this.array)}_normalize(e){let t=this._normalizationScale;return t!==void 0?Math.round(e*t):Ed(e,this.array)}};var Do=class extends Bt{constructor(e,t,i){super(new Uint16Array(e),t,i)}};var No=class extends Bt{constructor(e,t,i){super(new Uint32Array(e),t,i)}};var kt=class extends Bt{constructor(e,t,i){super(new Float32Array(e),t,i)}},my=new Cn,yo=new A,Iu=new A,Pn=class{constructor(e=new A,t=-1){this.isSphere=!0,this.center=e,this.radius=t}set(e,t){return this.center.copy(e),this.radius=t,this}setFromPoints(e,t){let i=this.center;t!==void 0?i.copy(t):my.setFromPoints(e).getCenter(i);let s=0;for(let r=0,o=e.length;r<o;r++)s=Math.max(s,i.distanceToSquared(e[r]));return this.radius=Math.sqrt(s),this}copy(e){return this.center.copy(e.center),this.radius=e.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(e){return e.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(e){return e.distanceTo(this.center)-this.radius}intersectsSphere(e){let t=this.radius+e.radius;return e.center.distanceToSquared(this.center)<=t*t}intersectsBox(e){return e.intersectsSphere(this)}intersectsPlane(e){return Math.abs(e.distanceToPoint(this.center))<=this.radius}clampPoint(e,t){let i=this.center.distanceToSquared(e);return t.copy(e),i>this.radius*this.radius&&(t.sub(this.center).normalize(),t.multiplyScalar(this.radius).add(this.center)),t}getBoundingBox(e){return this.isEmpty()?(e.makeEmpty(),e):(e.set(this.center,this.center),e.expandByScalar(this.radius),e)}applyMatrix4(e){return this.center.applyMatrix4(e),this.radius=this.radius*e.getMaxScaleOnAxis(),this}translate(e){return this.center.add(e),this}expandByPoint(e){if(this.isEmpty())return this.center.copy(e),this.radius=0,this;yo.subVectors(e,this.center);let t=yo.lengthSq();if(t>this.radius*this.radius){let i=Math.sqrt(t),s=(i-this.radius)*.5;this.center.addScaledVector(yo,s/i),this.radius+=s}return this}union(e){return e.isEmpty()?this:this.isEmpty()?(this.copy(e),this):(this.center.equals(e.center)===!0?this.radius=Math.max(this.radius,e.radius):(Iu.subVectors(e.center,this.center).setLength(e.radius),this.expandByPoint(yo.copy(e.center).add(Iu)),this.expandByPoint(yo.copy(e.center).sub(Iu))),this)}equals(e){return e.center.equals(this.center)&&e.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(e){return this.radius=e.radius,this.center.fromArray(e.center),this}},gy=0,Fn=new Ke,Lu=new Yt,ur=new A,Tn=new Cn,xo=new Cn,Ft=new A,Pt=class n extends Kn{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:gy++}),this.uuid=hs(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(e){return Array.isArray(e)?this.index=new(Vv(e)?No:Do)(e,1):this.index=e,this}setIndirect(e,t=0){return this.indirect=e,this.indirectOffset=t,this}getIndirect(){return this.indirect}getAttribute(e){return this.attributes[e]}setAttribute(e,t){return this.attributes[e]=t,this}deleteAttribute(e){return delete this.attributes[e],this}hasAttribute(e){return this.attributes[e]!==void 0}addGroup(e,t,i=0){this.groups.push({start:e,count:t,materialIndex:i})}clearGroups(){this.groups=[]}setDrawRange(e,t){this.drawRange.start=e,this.drawRange.count=t}applyMatrix4(e){let t=this.attributes.position;t!==void 0&&(t.applyMatrix4(e),t.needsUpdate=!0);let i=this.attributes.normal;if(i!==void 0){let r=new Ue().getNormalMatrix(e);i.applyNormalMatrix(r),i.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(e),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(e){return Fn.makeRotationFromQuaternion(e),this.applyMatrix4(Fn),this}rotateX(e){return Fn.makeRotationX(e),this.applyMatrix4(Fn),this}rotateY(e){return Fn.makeRotationY(e),this.applyMatrix4(Fn),this}rotateZ(e){return Fn.makeRotationZ(e),this.applyMatrix4(Fn),this}translate(e,t,i){return Fn.makeTranslation(e,t,i),this.applyMatrix4(Fn),this}scale(e,t,i){return Fn.makeScale(e,t,i),this.applyMatrix4(Fn),this}lookAt(e){return Lu.lookAt(e),Lu.updateMatrix(),this.applyMatrix4(Lu.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(ur).negate(),this.translate(ur.x,ur.y,ur.z),this}setFromPoints(e){let t=this.getAttribute("position");if(t===void 0){let i=[];for(let s=0,r=e.length;s<r;s++){let o=e[s];i.push(o.x,o.y,o.z||0)}this.setAttribute("position",new kt(i,3))}else{let i=Math.min(e.length,t.count);for(let s=0;s<i;s++){let r=e[s];t.setXYZ(s,r.x,r.y,r.z||0)}e.length>t.count&&Ce("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),t.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Cn);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){De("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new A(-1/0,-1/0,-1/0),new A(1/0,1/0,1/0));return}if(e!==void 0){if(this.boundingBox.setFromBufferAttribute(e),t)for(let i=0,s=t.length;i<s;i++){let r=t[i];Tn.setFromBufferAttribute(r),this.morphTargetsRelative?(Ft.addVectors(this.boundingBox.min,Tn.min),this.boundingBox.expandByPoint(Ft),Ft.addVectors(this.boundingBox.max,Tn.max),this.boundingBox.expandByPoint(Ft)):(this.boundingBox.expandByPoint(Tn.min),this.boundingBox.expandByPoint(Tn.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&De('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new Pn);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){De("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new A,1/0);return}if(e){let i=this.boundingSphere.center;if(Tn.setFromBufferAttribute(e),t)for(let r=0,o=t.length;r<o;r++){let a=t[r];xo.setFromBufferAttribute(a),this.morphTargetsRelative?(Ft.addVectors(Tn.min,xo.min),Tn.expandByPoint(Ft),Ft.addVectors(Tn.max,xo.max),Tn.expandByPoint(Ft)):(Tn.expandByPoint(xo.min),Tn.expandByPoint(xo.max))}Tn.getCenter(i);let s=0;for(let r=0,o=e.count;r<o;r++)Ft.fromBufferAttribute(e,r),s=Math.max(s,i.distanceToSquared(Ft));if(t)for(let r=0,o=t.length;r<o;r++){let a=t[r],l=this.morphTargetsRelative;for(let c=0,h=a.count;c<h;c++)Ft.fromBufferAttribute(a,c),l&&(ur.fromBufferAttribute(e,c),Ft.add(ur)),s=Math.max(s,i.distanceToSquared(Ft))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&De('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let e=this.index,t=this.attributes;if(e===null||t.position===void 0||t.normal===void 0||t.uv===void 0){De("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let i=t.position,s=t.normal,r=t.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==i.count)&&(o=new Bt(new Float32Array(4*i.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(i.count);for(let k=0;k<i.count;k++)a[k]=new A,l[k]=new A;let h=new A,f=new A,d=new A,u=new Ee,m=new Ee,y=new Ee,p=new A,g=new A;function M(k,D,U){c[k]=c[D]=c[U]=1,h.fromBufferAttribute(i,k),f.fromBufferAttribute(i,D),d.fromBufferAttribute(i,U),u.fromBufferAttribute(r,k),m.fromBufferAttribute(r,D),y.fromBufferAttribute(r,U),f.sub(h),d.sub(h),m.sub(u),y.sub(u);let z=1/(m.x*y.y-y.x*m.y);isFinite(z)&&(p.copy(f).multiplyScalar(y.y).addScaledVector(d,-m.y).multiplyScalar(z),g.copy(d).multiplyScalar(m.x).addScaledVector(f,-y.x).multiplyScalar(z),a[k].add(p),a[D].add(p),a[U].add(p),l[k].add(g),l[D].add(g),l[U].add(g))}let w=this.groups;w.length===0&&(w=[{start:0,count:e.count}]);for(let k=0,D=w.length;k<D;++k){let U=w[k],z=U.start,H=U.count;for(let L=z,q=z+H;L<q;L+=3)M(e.getX(L+0),e.getX(L+1),e.getX(L+2))}let b=new A,C=new A,R=new A,_=new A;function E(k){R.fromBufferAttribute(s,k),_.copy(R);let D=a[k];b.copy(D),b.sub(R.multiplyScalar(R.dot(D))).normalize(),C.crossVectors(_,D);let z=C.dot(l[k])<0?-1:1;o.setXYZW(k,b.x,b.y,b.z,z)}for(let k=0,D=i.count;k<D;++k)c[k]&&E(k);this._transformed=!0}computeVertexNormals(){let e=this.index,t=this.getAttribute("position");if(t!==void 0){let i=this.getAttribute("normal");if(i===void 0||i.count!==t.count)i=new Bt(new Float32Array(t.count*3),3),this.setAttribute("normal",i);else for(let d=0,u=i.count;d<u;d++)i.setXYZ(d,0,0,0);let s=new A,r=new A,o=new A,a=new A,l=new A,c=new A,h=new A,f=new A;if(e)for(let d=0,u=e.count;d<u;d+=3){let m=e.getX(d+0),y=e.getX(d+1),p=e.getX(d+2);s.fromBufferAttribute(t,m),r.fromBufferAttribute(t,y),o.fromBufferAttribute(t,p),h.subVectors(o,r),f.subVectors(s,r),h.cross(f),a.fromBufferAttribute(i,m),l.fromBufferAttribute(i,y),c.fromBufferAttribute(i,p),a.add(h),l.add(h),c.add(h),i.setXYZ(m,a.x,a.y,a.z),i.setXYZ(y,l.x,l.y,l.z),i.setXYZ(p,c.x,c.y,c.z)}else for(let d=0,u=t.count;d<u;d+=3)s.fromBufferAttribute(t,d+0),r.fromBufferAttribute(t,d+1),o.fromBufferAttribute(t,d+2),h.subVectors(o,r),f.subVectors(s,r),h.cross(f),i.setXYZ(d+0,h.x,h.y,h.z),i.setXYZ(d+1,h.x,h.y,h.z),i.setXYZ(d+2,h.x,h.y,h.z);this.normalizeNormals(),i.needsUpdate=!0}}normalizeNormals(){let e=this.attributes.normal;for(let t=0,i=e.count;t<i;t++)Ft.fromBufferAttribute(e,t),Ft.normalize(),e.setXYZ(t,Ft.x,Ft.y,Ft.z)}toNonIndexed(){function e(a,l){let c=a.array,h=a.itemSize,f=a.normalized,d=new c.constructor(l.length*h),u=0,m=0;for(let y=0,p=l.length;y<p;y++){a.isInterleavedBufferAttribute?u=l[y]*a.data.stride+a.offset:u=l[y]*h;for(let g=0;g<h;g++)d[m++]=c[u++]}return new Bt(d,h,f)}if(this.index===null)return Ce("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let t=new n,i=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=e(l,i);t.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let h=0,f=c.length;h<f;h++){let d=c[h],u=e(d,i);l.push(u)}t.morphAttributes[a]=l}t.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];t.addGroup(c.start,c.count,c.materialIndex)}return t}toJSON(){let e={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(e.uuid=this.uuid,e.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,e.name=this.name,Object.keys(this.userData).length>0&&(e.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(e[c]=l[c]);return e}e.data={attributes:{}};let t=this.index;t!==null&&(e.data.index={type:t.array.constructor.name,array:Array.prototype.slice.call(t.array)});let i=this.attributes;for(let l in i){let c=i[l];e.data.attributes[l]=c.toJSON(e.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let f=0,d=c.length;f<d;f++){let u=c[f];h.push(u.toJSON(e.data))}h.length>0&&(s[l]=h,r=!0)}r&&(e.data.morphAttributes=s,e.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(e.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(e.data.boundingSphere=a.toJSON()),e}clone(){return new this.constructor().copy(this)}copy(e){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let t={};this.name=e.name;let i=e.index;i!==null&&this.setIndex(i.clone());let s=e.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(t))}let r=e.morphAttributes;for(let c in r){let h=[],f=r[c];for(let d=0,u=f.length;d<u;d++)h.push(f[d].clone(t));this.morphAttributes[c]=h}this.morphTargetsRelative=e.morphTargetsRelative;let o=e.groups;for(let c=0,h=o.length;c<h;c++){let f=o[c];this.addGroup(f.start,f.count,f.materialIndex)}let a=e.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=e.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=e.drawRange.start,this.drawRange.count=e.drawRange.count,this.userData=e.userData,this._transformed=e._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}},Dl=class{constructor(e,t){this.isInterleavedBuffer=!0,this.array=e,this.stride=t,this.count=e!==void 0?e.length/t:0,this.usage=xd,this.updateRanges=[],this.version=0,this.uuid=hs()}onUploadCallback(){}set needsUpdate(e){e===!0&&this.version++}setUsage(e){return this.usage=e,this}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}copy(e){return this.array=new e.array.constructor(e.array),this.count=e.count,this.stride=e.stride,this.usage=e.usage,this}copyAt(e,t,i){e*=this.stride,i*=t.stride;for(let s=0,r=this.stride;s<r;s++)this.array[e+s]=t.array[i+s];return this}set(e,t=0){return this.array.set(e,t),this}clone(e){e.arrayBuffers===void 0&&(e.arrayBuffers={});let t=am(this.array);e.arrayBuffers[t]===void 0&&(e.arrayBuffers[t]=this.array.slice(0).buffer);let i=new this.array.constructor(e.arrayBuffers[t]),s=new this.constructor(i,this.stride);return s.setUsage(this.usage),s}onUpload(e){return this.onUploadCallback=e,this}toJSON(e){e.arrayBuffers===void 0&&(e.arrayBuffers={});let t=am(this.array);e.arrayBuffers[t]===void 0&&(e.arrayBuffers[t]=Array.from(new Uint32Array(this.array.slice(0).buffer)));let i={uuid:this.uuid,buffer:t,type:this.array.constructor.name,stride:this.stride};return i.usage=this.usage,i}};function am(n){return n.buffer._uuid===void 0&&(n.buffer._uuid=hs()),n.byteOffset===0&&n.byteLength===n.buffer.byteLength?n.buffer._uuid:n.buffer._uuid+":"+n.byteOffset+":"+n.byteLength}var an=new A,Jn=class n{constructor(e,t,i,s=!1){this.isInterleavedBufferAttribute=!0,this.name="",this.data=e,this.itemSize=t,this.offset=i,this.normalized=s,this._normalizationScale=e!==void 0?kc(e.array):void 0}get count(){return this.data.count}get array(){return this.data.array}set needsUpdate(e){this.data.needsUpdate=e}applyMatrix4(e){for(let t=0,i=this.data.count;t<i;t++)an.fromBufferAttribute(this,t),an.applyMatrix4(e),this.setXYZ(t,an.x,an.y,an.z);return this}applyNormalMatrix(e){for(let t=0,i=this.count;t<i;t++)an.fromBufferAttribute(this,t),an.applyNormalMatrix(e),this.setXYZ(t,an.x,an.y,an.z);return this}transformDirection(e){for(let t=0,i=this.count;t<i;t++)an.fromBufferAttribute(this,t),an.transformDirection(e),this.setXYZ(t,an.x,an.y,an.z);return this}getComponent(e,t){let i=this.array[e*this.data.stride+this.offset+t];return this.normalized&&(i=this._denormalize(i)),i}setComponent(e,t,i){return this.normalized&&(i=this._normalize(i)),this.data.array[e*this.data.stride+this.offset+t]=i,this}setX(e,t){return this.normalized&&(t=this._normalize(t)),this.data.array[e*this.data.stride+this.offset]=t,this}setY(e,t){return this.normalized&&(t=this._normalize(t)),this.data.array[e*this.data.stride+this.offset+1]=t,this}setZ(e,t){return this.normalized&&(t=this._normalize(t)),this.data.array[e*this.data.stride+this.offset+2]=t,this}setW(e,t){return this.normalized&&(t=this._normalize(t)),this.data.array[e*this.data.stride+this.offset+3]=t,this}getX(e){let t=this.data.array[e*this.data.stride+this.offset];return this.normalized&&(t=this._denormalize(t)),t}getY(e){let t=this.data.array[e*this.data.stride+this.offset+1];return this.normalized&&(t=this._denormalize(t)),t}getZ(e){let t=this.data.array[e*this.data.stride+this.offset+2];return this.normalized&&(t=this._denormalize(t)),t}getW(e){let t=this.data.array[e*this.data.stride+this.offset+3];return this.normalized&&(t=this._denormalize(t)),t}setXY(e,t,i){return e=e*this.data.stride+this.offset,this.normalized&&(t=this._normalize(t),i=this._normalize(i)),this.data.array[e+0]=t,this.data.array[e+1]=i,this}setXYZ(e,t,i,s){return e=e*this.data.stride+this.offset,this.normalized&&(t=this._normalize(t),i=this._normalize(i),s=this._normalize(s)),this.data.array[e+0]=t,this.data.array[e+1]=i,this.data.array[e+2]=s,this}setXYZW(e,t,i,s,r){return e=e*this.data.stride+this.offset,this.normalized&&(t=this._normalize(t),i=this._normalize(i),s=this._normalize(s),r=this._normalize(r)),this.data.array[e+0]=t,this.data.array[e+1]=i,this.data.array[e+2]=s,this.data.array[e+3]=r,this}clone(e){if(e===void 0){Po("InterleavedBufferAttribute.clone(): Cloning an interleaved buffer attribute will de-interleave buffer data.");let t=[];for(let i=0;i<this.count;i++){let s=i*this.data.stride+this.offset;for(let r=0;r<this.itemSize;r++)t.push(this.data.array[s+r])}return new Bt(new this.array.constructor(t),this.itemSize,this.normalized)}else return e.interleavedBuffers===void 0&&(e.interleavedBuffers={}),e.interleavedBuffers[this.data.uuid]===void 0&&(e.interleavedBuffers[this.data.uuid]=this.data.clone(e)),new n(e.interleavedBuffers[this.data.uuid],this.itemSize,this.offset,this.normalized)}toJSON(e){if(e===void 0){Po("InterleavedBufferAttribute.toJSON(): Serializing an interleaved buffer attribute will de-interleave buffer data.");let t=[];for(let i=0;i<this.count;i++){let s=i*this.data.stride+this.offset;for(let r=0;r<this.itemSize;r++)t.push(this.data.array[s+r])}return{itemSize:this.itemSize,type:this.array.constructor.name,array:t,normalized:this.normalized}}else return e.interleavedBuffers===void 0&&(e.interleavedBuffers={}),e.interleavedBuffers[this.data.uuid]===void 0&&(e.interleavedBuffers[this.data.uuid]=this.data.toJSON(e)),{isInterleavedBufferAttribute:!0,itemSize:this.itemSize,data:this.data.uuid,offset:this.offset,normalized:this.normalized}}_denormalize(e){let t=this._normalizationScale;return t!==void 0?Math.max(e/t,-1):wd(e,this.data.array)}_normalize(e){let t=this._normalizationScale;return t!==void 0?Math.round(e*t):Ed(e,this.data.array)}},Du=new A,_y=new A,vy=new Ue,ln=class{constructor(e=new A(1,0,0),t=0){this.isPlane=!0,this.normal=e,this.constant=t}set(e,t){return this.normal.copy(e),this.constant=t,this}setComponents(e,t,i,s){return this.normal.set(e,t,i),this.constant=s,this}setFromNormalAndCoplanarPoint(e,t){return this.normal.copy(e),this.constant=-t.dot(this.normal),this}setFromCoplanarPoints(e,t,i){let s=Du.subVectors(i,t).cross(_y.subVectors(e,t)).normalize();return this.setFromNormalAndCoplanarPoint(s,e),this}copy(e){return this.normal.copy(e.normal),this.constant=e.constant,this}normalize(){let e=1/this.normal.length();return this.normal.multiplyScalar(e),this.constant*=e,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(e){return this.normal.dot(e)+this.constant}distanceToSphere(e){return this.distanceToPoint(e.center)-e.radius}projectPoint(e,t){return t.copy(e).addScaledVector(this.normal,-this.distanceToPoint(e))}intersectLine(e,t,i=!0){let s=e.delta(Du),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(e.start)===0?t.copy(e.start):null;let o=-(e.start.dot(this.normal)+this.constant)/r;return i===!0&&(o<0||o>1)?null:t.copy(e.start).addScaledVector(s,o)}intersectsLine(e){let t=this.distanceToPoint(e.start),i=this.distanceToPoint(e.end);return t<0&&i>0||i<0&&t>0}intersectsBox(e){return e.intersectsPlane(this)}intersectsSphere(e){return e.intersectsPlane(this)}coplanarPoint(e){return e.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(e,t){let i=t||vy.getNormalMatrix(e),s=this.coplanarPoint(Du).applyMatrix4(e),r=this.normal.applyMatrix3(i).normalize();return this.constant=-s.dot(r),this}translate(e){return this.constant-=e.dot(this.normal),this}equals(e){return e.normal.equals(this.normal)&&e.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(e){return this.normal.fromArray(e.normal),this.constant=e.constant,this}},yy=0,jn=class extends Kn{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:yy++}),this.uuid=hs(),this.name="",this.type="Material",this.blending=Dr,this.side=ls,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=ed,this.blendDst=td,this.blendEquation=Os,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new Re(0,0,0),this.blendAlpha=0,this.depthFunc=vr,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=ng,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=xl,this.stencilZFail=xl,this.stencilZPass=xl,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(e){this._alphaTest>0!=e>0&&this.version++,this._alphaTest=e}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(e){if(e!==void 0)for(let t in e){let i=e[t];if(i===void 0){Ce(`Material: parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){Ce(`Material: '${t}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(i):s&&s.isVector2&&i&&i.isVector2||s&&s.isEuler&&i&&i.isEuler||s&&s.isVector3&&i&&i.isVector3?s.copy(i):this[t]=i}}toJSON(e){let t=e===void 0||typeof e=="string";t&&(e={textures:{},images:{}});let i={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};i.uuid=this.uuid,i.type=this.type,i.blending=this.blending,i.side=this.side,i.shadowSide=this.shadowSide,i.vertexColors=this.vertexColors,i.opacity=this.opacity,i.transparent=this.transparent,i.blendSrc=this.blendSrc,i.blendDst=this.blendDst,i.blendEquation=this.blendEquation,i.blendSrcAlpha=this.blendSrcAlpha,i.blendDstAlpha=this.blendDstAlpha,i.blendEquationAlpha=this.blendEquationAlpha,i.blendColor=this.blendColor.getHex(),i.blendAlpha=this.blendAlpha,i.depthFunc=this.depthFunc,i.depthTest=this.depthTest,i.depthWrite=this.depthWrite,i.colorWrite=this.colorWrite,i.clipIntersection=this.clipIntersection,i.clipShadows=this.clipShadows,i.stencilWriteMask=this.stencilWriteMask,i.stencilFunc=this.stencilFunc,i.stencilRef=this.stencilRef,i.stencilFuncMask=this.stencilFuncMask,i.stencilFail=this.stencilFail,i.stencilZFail=this.stencilZFail,i.stencilZPass=this.stencilZPass,i.stencilWrite=this.stencilWrite,i.polygonOffset=this.polygonOffset,i.polygonOffsetFactor=this.polygonOffsetFactor,i.polygonOffsetUnits=this.polygonOffsetUnits,i.dithering=this.dithering,i.alphaTest=this.alphaTest,i.alphaHash=this.alphaHash,i.alphaToCoverage=this.alphaToCoverage,i.premultipliedAlpha=this.premultipliedAlpha,i.forceSinglePass=this.forceSinglePass,i.allowOverride=this.allowOverride,i.visible=this.visible,i.toneMapped=this.toneMapped,i.name=this.name,this.color&&this.color.isColor&&(i.color=this.color.getHex()),this.roughness!==void 0&&(i.roughness=this.roughness),this.metalness!==void 0&&(i.metalness=this.metalness),this.sheen!==void 0&&(i.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(i.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(i.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(i.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(i.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(i.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(i.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(i.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(i.shininess=this.shininess),this.clearcoat!==void 0&&(i.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(i.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(i.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(i.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(e).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(i.clearcoatMap=this.clearcoatMap.toJSON(e).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(i.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(e).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(i.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(e).uuid,i.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(i.sheenColorMap=this.sheenColorMap.toJSON(e).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(i.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(e).uuid),this.dispersion!==void 0&&(i.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(i.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(i.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(i.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(i.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(i.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(i.iridescenceMap=this.iridescenceMap.toJSON(e).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(i.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(e).uuid),this.anisotropy!==void 0&&(i.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(i.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(i.anisotropyMap=this.anisotropyMap.toJSON(e).uuid),this.map&&this.map.isTexture&&(i.map=this.map.toJSON(e).uuid),this.matcap&&this.matcap.isTexture&&(i.matcap=this.matcap.toJSON(e).uuid),this.alphaMap&&this.alphaMap.isTexture&&(i.alphaMap=this.alphaMap.toJSON(e).uuid),this.lightMap&&this.lightMap.isTexture&&(i.lightMap=this.lightMap.toJSON(e).uuid,i.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(i.aoMap=this.aoMap.toJSON(e).uuid,i.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(i.bumpMap=this.bumpMap.toJSON(e).uuid,i.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(i.normalMap=this.normalMap.toJSON(e).uuid,i.normalMapType=this.normalMapType,i.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(i.displacementMap=this.displacementMap.toJSON(e).uuid,i.displacementScale=this.displacementScale,i.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(i.roughnessMap=this.roughnessMap.toJSON(e).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(i.metalnessMap=this.metalnessMap.toJSON(e).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(i.emissiveMap=this.emissiveMap.toJSON(e).uuid),this.specularMap&&this.specularMap.isTexture&&(i.specularMap=this.specularMap.toJSON(e).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(i.specularIntensityMap=this.specularIntensityMap.toJSON(e).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(i.specularColorMap=this.specularColorMap.toJSON(e).uuid),this.envMap&&this.envMap.isTexture&&(i.envMap=this.envMap.toJSON(e).uuid,this.combine!==void 0&&(i.combine=this.combine)),this.envMapRotation!==void 0&&(i.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(i.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(i.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(i.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(i.gradientMap=this.gradientMap.toJSON(e).uuid),this.transmission!==void 0&&(i.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(i.transmissionMap=this.transmissionMap.toJSON(e).uuid),this.thickness!==void 0&&(i.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(i.thicknessMap=this.thicknessMap.toJSON(e).uuid),this.attenuationDistance!==void 0&&(i.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(i.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(i.size=this.size),this.sizeAttenuation!==void 0&&(i.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(i.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(i.rotation=this.rotation),this.depthPacking!==void 0&&(i.depthPacking=this.depthPacking),this.linewidth!==void 0&&(i.linewidth=this.linewidth),this.linecap!==void 0&&(i.linecap=this.linecap),this.linejoin!==void 0&&(i.linejoin=this.linejoin),this.dashSize!==void 0&&(i.dashSize=this.dashSize),this.gapSize!==void 0&&(i.gapSize=this.gapSize),this.scale!==void 0&&(i.scale=this.scale),this.wireframe!==void 0&&(i.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(i.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(i.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(i.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(i.flatShading=this.flatShading),this.fog!==void 0&&(i.fog=this.fog),Object.keys(this.userData).length>0&&(i.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(t){let r=s(e.textures),o=s(e.images);r.length>0&&(i.textures=r),o.length>0&&(i.images=o)}return i}fromJSON(e,t){if(e.uuid!==void 0&&(this.uuid=e.uuid),e.name!==void 0&&(this.name=e.name),e.color!==void 0&&this.color!==void 0&&this.color.setHex(e.color),e.roughness!==void 0&&(this.roughness=e.roughness),e.metalness!==void 0&&(this.metalness=e.metalness),e.sheen!==void 0&&(this.sheen=e.sheen),e.sheenColor!==void 0&&(this.sheenColor=new Re().setHex(e.sheenColor)),e.sheenRoughness!==void 0&&(this.sheenRoughness=e.sheenRoughness),e.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(e.emissive),e.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(e.specular),e.specularIntensity!==void 0&&(this.specularIntensity=e.specularIntensity),e.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(e.specularColor),e.shininess!==void 0&&(this.shininess=e.shininess),e.clearcoat!==void 0&&(this.clearcoat=e.clearcoat),e.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=e.clearcoatRoughness),e.diffuseRoughness!==void 0&&(this.diffuseRoughness=e.diffuseRoughness),e.dispersion!==void 0&&(this.dispersion=e.dispersion),e.retroreflectivity!==void 0&&(this.retroreflectivity=e.retroreflectivity),e.iridescence!==void 0&&(this.iridescence=e.iridescence),e.iridescenceIOR!==void 0&&(this.iridescenceIOR=e.iridescenceIOR),e.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessMinimum),e.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=e.iridescenceThicknessMaximum),e.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=e.iridescenceThicknessRange[1]),e.transmission!==void 0&&(this.transmission=e.transmission),e.thickness!==void 0&&(this.thickness=e.thickness),e.attenuationDistance!==void 0&&(this.attenuationDistance=e.attenuationDistance),e.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(e.attenuationColor),e.anisotropy!==void 0&&(this.anisotropy=e.anisotropy),e.anisotropyRotation!==void 0&&(this.anisotropyRotation=e.anisotropyRotation),e.fog!==void 0&&(this.fog=e.fog),e.flatShading!==void 0&&(this.flatShading=e.flatShading),e.blending!==void 0&&(this.blending=e.blending),e.combine!==void 0&&(this.combine=e.combine),e.side!==void 0&&(this.side=e.side),e.shadowSide!==void 0&&(this.shadowSide=e.shadowSide),e.opacity!==void 0&&(this.opacity=e.opacity),e.transparent!==void 0&&(this.transparent=e.transparent),e.alphaTest!==void 0&&(this.alphaTest=e.alphaTest),e.alphaHash!==void 0&&(this.alphaHash=e.alphaHash),e.depthFunc!==void 0&&(this.depthFunc=e.depthFunc),e.depthTest!==void 0&&(this.depthTest=e.depthTest),e.depthWrite!==void 0&&(this.depthWrite=e.depthWrite),e.colorWrite!==void 0&&(this.colorWrite=e.colorWrite),e.clippingPlanes!==void 0&&(this.clippingPlanes=e.clippingPlanes.map(i=>new ln().fromJSON(i))),e.clipIntersection!==void 0&&(this.clipIntersection=e.clipIntersection),e.clipShadows!==void 0&&(this.clipShadows=e.clipShadows),e.depthPacking!==void 0&&(this.depthPacking=e.depthPacking),e.blendSrc!==void 0&&(this.blendSrc=e.blendSrc),e.blendDst!==void 0&&(this.blendDst=e.blendDst),e.blendEquation!==void 0&&(this.blendEquation=e.blendEquation),e.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=e.blendSrcAlpha),e.blendDstAlpha!==void 0&&(this.blendDstAlpha=e.blendDstAlpha),e.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=e.blendEquationAlpha),e.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(e.blendColor),e.blendAlpha!==void 0&&(this.blendAlpha=e.blendAlpha),e.stencilWriteMask!==void 0&&(this.stencilWriteMask=e.stencilWriteMask),e.stencilFunc!==void 0&&(this.stencilFunc=e.stencilFunc),e.stencilRef!==void 0&&(this.stencilRef=e.stencilRef),e.stencilFuncMask!==void 0&&(this.stencilFuncMask=e.stencilFuncMask),e.stencilFail!==void 0&&(this.stencilFail=e.stencilFail),e.stencilZFail!==void 0&&(this.stencilZFail=e.stencilZFail),e.stencilZPass!==void 0&&(this.stencilZPass=e.stencilZPass),e.stencilWrite!==void 0&&(this.stencilWrite=e.stencilWrite),e.wireframe!==void 0&&(this.wireframe=e.wireframe),e.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=e.wireframeLinewidth),e.wireframeLinecap!==void 0&&(this.wireframeLinecap=e.wireframeLinecap),e.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=e.wireframeLinejoin),e.rotation!==void 0&&(this.rotation=e.rotation),e.linewidth!==void 0&&(this.linewidth=e.linewidth),e.linecap!==void 0&&(this.linecap=e.linecap),e.linejoin!==void 0&&(this.linejoin=e.linejoin),e.dashSize!==void 0&&(this.dashSize=e.dashSize),e.gapSize!==void 0&&(this.gapSize=e.gapSize),e.scale!==void 0&&(this.scale=e.scale),e.polygonOffset!==void 0&&(this.polygonOffset=e.polygonOffset),e.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=e.polygonOffsetFactor),e.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=e.polygonOffsetUnits),e.dithering!==void 0&&(this.dithering=e.dithering),e.alphaToCoverage!==void 0&&(this.alphaToCoverage=e.alphaToCoverage),e.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=e.premultipliedAlpha),e.forceSinglePass!==void 0&&(this.forceSinglePass=e.forceSinglePass),e.allowOverride!==void 0&&(this.allowOverride=e.allowOverride),e.visible!==void 0&&(this.visible=e.visible),e.toneMapped!==void 0&&(this.toneMapped=e.toneMapped),e.userData!==void 0&&(this.userData=e.userData),e.vertexColors!==void 0&&(typeof e.vertexColors=="number"?this.vertexColors=e.vertexColors>0:this.vertexColors=e.vertexColors),e.size!==void 0&&(this.size=e.size),e.sizeAttenuation!==void 0&&(this.sizeAttenuation=e.sizeAttenuation),e.map!==void 0&&(this.map=t[e.map]||null),e.matcap!==void 0&&(this.matcap=t[e.matcap]||null),e.alphaMap!==void 0&&(this.alphaMap=t[e.alphaMap]||null),e.bumpMap!==void 0&&(this.bumpMap=t[e.bumpMap]||null),e.bumpScale!==void 0&&(this.bumpScale=e.bumpScale),e.normalMap!==void 0&&(this.normalMap=t[e.normalMap]||null),e.normalMapType!==void 0&&(this.normalMapType=e.normalMapType),e.normalScale!==void 0){let i=e.normalScale;Array.isArray(i)===!1&&(i=[i,i]),this.normalScale=new Ee().fromArray(i)}return e.displacementMap!==void 0&&(this.displacementMap=t[e.displacementMap]||null),e.displacementScale!==void 0&&(this.displacementScale=e.displacementScale),e.displacementBias!==void 0&&(this.displacementBias=e.displacementBias),e.roughnessMap!==void 0&&(this.roughnessMap=t[e.roughnessMap]||null),e.metalnessMap!==void 0&&(this.metalnessMap=t[e.metalnessMap]||null),e.emissiveMap!==void 0&&(this.emissiveMap=t[e.emissiveMap]||null),e.emissiveIntensity!==void 0&&(this.emissiveIntensity=e.emissiveIntensity),e.specularMap!==void 0&&(this.specularMap=t[e.specularMap]||null),e.specularIntensityMap!==void 0&&(this.specularIntensityMap=t[e.specularIntensityMap]||null),e.specularColorMap!==void 0&&(this.specularColorMap=t[e.specularColorMap]||null),e.envMap!==void 0&&(this.envMap=t[e.envMap]||null),e.envMapRotation!==void 0&&this.envMapRotation.fromArray(e.envMapRotation),e.envMapIntensity!==void 0&&(this.envMapIntensity=e.envMapIntensity),e.reflectivity!==void 0&&(this.reflectivity=e.reflectivity),e.refractionRatio!==void 0&&(this.refractionRatio=e.refractionRatio),e.lightMap!==void 0&&(this.lightMap=t[e.lightMap]||null),e.lightMapIntensity!==void 0&&(this.lightMapIntensity=e.lightMapIntensity),e.aoMap!==void 0&&(this.aoMap=t[e.aoMap]||null),e.aoMapIntensity!==void 0&&(this.aoMapIntensity=e.aoMapIntensity),e.gradientMap!==void 0&&(this.gradientMap=t[e.gradientMap]||null),e.clearcoatMap!==void 0&&(this.clearcoatMap=t[e.clearcoatMap]||null),e.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=t[e.clearcoatRoughnessMap]||null),e.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=t[e.clearcoatNormalMap]||null),e.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new Ee().fromArray(e.clearcoatNormalScale)),e.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=t[e.diffuseRoughnessMap]||null),e.iridescenceMap!==void 0&&(this.iridescenceMap=t[e.iridescenceMap]||null),e.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=t[e.iridescenceThicknessMap]||null),e.transmissionMap!==void 0&&(this.transmissionMap=t[e.transmissionMap]||null),e.thicknessMap!==void 0&&(this.thicknessMap=t[e.thicknessMap]||null),e.anisotropyMap!==void 0&&(this.anisotropyMap=t[e.anisotropyMap]||null),e.sheenColorMap!==void 0&&(this.sheenColorMap=t[e.sheenColorMap]||null),e.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=t[e.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(e){this.name=e.name,this.blending=e.blending,this.side=e.side,this.vertexColors=e.vertexColors,this.opacity=e.opacity,this.transparent=e.transparent,this.blendSrc=e.blendSrc,this.blendDst=e.blendDst,this.blendEquation=e.blendEquation,this.blendSrcAlpha=e.blendSrcAlpha,this.blendDstAlpha=e.blendDstAlpha,this.blendEquationAlpha=e.blendEquationAlpha,this.blendColor.copy(e.blendColor),this.blendAlpha=e.blendAlpha,this.depthFunc=e.depthFunc,this.depthTest=e.depthTest,this.depthWrite=e.depthWrite,this.stencilWriteMask=e.stencilWriteMask,this.stencilFunc=e.stencilFunc,this.stencilRef=e.stencilRef,this.stencilFuncMask=e.stencilFuncMask,this.stencilFail=e.stencilFail,this.stencilZFail=e.stencilZFail,this.stencilZPass=e.stencilZPass,this.stencilWrite=e.stencilWrite;let t=e.clippingPlanes,i=null;if(t!==null){let s=t.length;i=new Array(s);for(let r=0;r!==s;++r)i[r]=t[r].clone()}return this.clippingPlanes=i,this.clipIntersection=e.clipIntersection,this.clipShadows=e.clipShadows,this.shadowSide=e.shadowSide,this.colorWrite=e.colorWrite,this.precision=e.precision,this.polygonOffset=e.polygonOffset,this.polygonOffsetFactor=e.polygonOffsetFactor,this.polygonOffsetUnits=e.polygonOffsetUnits,this.dithering=e.dithering,this.alphaTest=e.alphaTest,this.alphaHash=e.alphaHash,this.alphaToCoverage=e.alphaToCoverage,this.premultipliedAlpha=e.premultipliedAlpha,this.forceSinglePass=e.forceSinglePass,this.allowOverride=e.allowOverride,this.visible=e.visible,this.toneMapped=e.toneMapped,this.userData=JSON.parse(JSON.stringify(e.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(e){e===!0&&this.version++}};var Ci=new A,Nu=new A,tl=new A,nl=new A,es=class{constructor(e=new A,t=new A(0,0,-1)){this.origin=e,this.direction=t}set(e,t){return this.origin.copy(e),this.direction.copy(t),this}copy(e){return this.origin.copy(e.origin),this.direction.copy(e.direction),this}at(e,t){return t.copy(this.origin).addScaledVector(this.direction,e)}lookAt(e){return this.direction.copy(e).sub(this.origin).normalize(),this}recast(e){return this.origin.copy(this.at(e,Ci)),this}closestPointToPoint(e,t){t.subVectors(e,this.origin);let i=t.dot(this.direction);return i<0?t.copy(this.origin):t.copy(this.origin).addScaledVector(this.direction,i)}distanceToPoint(e){return Math.sqrt(this.distanceSqToPoint(e))}distanceSqToPoint(e){let t=Ci.subVectors(e,this.origin).dot(this.direction);return t<0?this.origin.distanceToSquared(e):(Ci.copy(this.origin).addScaledVector(this.direction,t),Ci.distanceToSquared(e))}distanceSqToSegment(e,t,i,s){Nu.copy(e).add(t).multiplyScalar(.5),tl.copy(t).sub(e).normalize(),nl.copy(this.origin).sub(Nu);let r=e.distanceTo(t)*.5,o=-this.direction.dot(tl),a=nl.dot(this.direction),l=-nl.dot(tl),c=nl.lengthSq(),h=Math.abs(1-o*o),f,d,u,m;if(h>0)if(f=o*l-a,d=o*a-l,m=r*h,f>=0)if(d>=-m)if(d<=m){let y=1/h;f*=y,d*=y,u=f*(f+o*d+2*a)+d*(o*f+d+2*l)+c}else d=r,f=Math.max(0,-(o*d+a)),u=-f*f+d*(d+2*l)+c;else d=-r,f=Math.max(0,-(o*d+a)),u=-f*f+d*(d+2*l)+c;else d<=-m?(f=Math.max(0,-(-o*r+a)),d=f>0?-r:Math.min(Math.max(-r,-l),r),u=-f*f+d*(d+2*l)+c):d<=m?(f=0,d=Math.min(Math.max(-r,-l),r),u=d*(d+2*l)+c):(f=Math.max(0,-(o*r+a)),d=f>0?r:Math.min(Math.max(-r,-l),r),u=-f*f+d*(d+2*l)+c);else d=o>0?-r:r,f=Math.max(0,-(o*d+a)),u=-f*f+d*(d+2*l)+c;return i&&i.copy(this.origin).addScaledVector(this.direction,f),s&&s.copy(Nu).addScaledVector(tl,d),u}intersectSphere(e,t){if(e.radius<0)return null;Ci.subVectors(e.center,this.origin);let i=Ci.dot(this.direction),s=Ci.dot(Ci)-i*i,r=e.radius*e.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=i-o,l=i+o;return l<0?null:a<0?this.at(l,t):this.at(a,t)}intersectsSphere(e){return e.radius<0?!1:this.distanceSqToPoint(e.center)<=e.radius*e.radius}distanceToPlane(e){let t=e.normal.dot(this.direction);if(t===0)return e.distanceToPoint(this.origin)===0?0:null;let i=-(this.origin.dot(e.normal)+e.constant)/t;return i>=0?i:null}intersectPlane(e,t){let i=this.distanceToPlane(e);return i===null?null:this.at(i,t)}intersectsPlane(e){let t=e.distanceToPoint(this.origin);return t===0||e.normal.dot(this.direction)*t<0}intersectBox(e,t){let i,s,r,o,a,l,c=1/this.direction.x,h=1/this.direction.y,f=1/this.direction.z,d=this.origin;return c>=0?(i=(e.min.x-d.x)*c,s=(e.max.x-d.x)*c):(i=(e.max.x-d.x)*c,s=(e.min.x-d.x)*c),h>=0?(r=(e.min.y-d.y)*h,o=(e.max.y-d.y)*h):(r=(e.max.y-d.y)*h,o=(e.min.y-d.y)*h),i>o||r>s||((r>i||isNaN(i))&&(i=r),(o<s||isNaN(s))&&(s=o),f>=0?(a=(e.min.z-d.z)*f,l=(e.max.z-d.z)*f):(a=(e.max.z-d.z)*f,l=(e.min.z-d.z)*f),i>l||a>s)||((a>i||i!==i)&&(i=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(i>=0?i:s,t)}intersectsBox(e){return this.intersectBox(e,Ci)!==null}intersectTriangle(e,t,i,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,h=a.z,f=e.x-o.x,d=e.y-o.y,u=e.z-o.z,m=t.x-o.x,y=t.y-o.y,p=t.z-o.z,g=i.x-o.x,M=i.y-o.y,w=i.z-o.z,b=Math.abs(l),C=Math.abs(c),R=Math.abs(h),_,E,k,D,U,z,H,L,q,J,G,ne;if(b>=C&&b>=R?(k=l,z=f,q=m,ne=g,l>=0?(_=c,E=h,D=d,U=u,H=y,L=p,J=M,G=w):(_=h,E=c,D=u,U=d,H=p,L=y,J=w,G=M)):C>=R?(k=c,z=d,q=y,ne=M,c>=0?(_=h,E=l,D=u,U=f,H=p,L=m,J=w,G=g):(_=l,E=h,D=f,U=u,H=m,L=p,J=g,G=w)):(k=h,z=u,q=p,ne=w,h>=0?(_=l,E=c,D=f,U=d,H=m,L=y,J=g,G=M):(_=c,E=l,D=d,U=f,H=y,L=m,J=M,G=g)),k===0)return null;let X=_/k,Q=E/k,ee=1/k,Me=D-X*z,Fe=U-Q*z,Z=H-X*q,me=L-Q*q,ye=J-X*ne,Pe=G-Q*ne,ge=ye*me-Pe*Z,ze=Me*Pe-Fe*ye,St=Z*Fe-me*Me;if(s){if(ge<0||ze<0||St<0)return null}else if((ge<0||ze<0||St<0)&&(ge>0||ze>0||St>0))return null;let Le=ge+ze+St;if(Le===0)return null;let rt=ee*(ge*z+ze*q+St*ne);return(Le>0?rt<0:rt>0)?null:this.at(rt/Le,r)}applyMatrix4(e){return this.origin.applyMatrix4(e),this.direction.transformDirection(e),this}equals(e){return e.origin.equals(this.origin)&&e.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},Tr=class extends jn{constructor(e){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new Re(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new hi,this.combine=Ql,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.specularMap=e.specularMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.combine=e.combine,this.reflectivity=e.reflectivity,this.refractionRatio=e.refractionRatio,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.fog=e.fog,this}},lm=new Ke,Ps=new es,il=new Pn,cm=new A,sl=new A,rl=new A,ol=new A,Uu=new A,al=new A,hm=new A,ll=new A,yt=class extends Yt{constructor(e=new Pt,t=new Tr){super(),this.isMesh=!0,this.type="Mesh",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}updateMorphTargets(){let t=this.geometry.morphAttributes,i=Object.keys(t);if(i.length>0){let s=t[i[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(e,t){let i=this.geometry,s=i.attributes.position,r=i.morphAttributes.position,o=i.morphTargetsRelative;t.fromBufferAttribute(s,e);let a=this.morphTargetInfluences;if(r&&a){al.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=a[l],f=r[l];h!==0&&(Uu.fromBufferAttribute(f,e),o?al.addScaledVector(Uu,h):al.addScaledVector(Uu.sub(t),h))}t.add(al)}return t}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let i=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(i.boundingSphere===null&&i.computeBoundingSphere(),il.copy(i.boundingSphere),il.applyMatrix4(r),Ps.copy(e.ray).recast(e.near),!(il.containsPoint(Ps.origin)===!1&&(Ps.intersectSphere(il,cm)===null||Ps.origin.distanceToSquared(cm)>(e.far-e.near)**2))&&(lm.copy(r).invert(),Ps.copy(e.ray).applyMatrix4(lm),!(i.boundingBox!==null&&Ps.intersectsBox(i.boundingBox)===!1)&&this._computeIntersections(e,t,Ps)))}_computeIntersections(e,t,i){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,f=r.attributes.normal,d=r.groups,u=r.drawRange;if(a!==null)if(Array.isArray(o))for(let m=0,y=d.length;m<y;m++){let p=d[m],g=o[p.materialIndex],M=Math.max(p.start,u.start),w=Math.min(a.count,Math.min(p.start+p.count,u.start+u.count));for(let b=M,C=w;b<C;b+=3){let R=a.getX(b),_=a.getX(b+1),E=a.getX(b+2);s=cl(this,g,e,i,c,h,f,R,_,E),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=p.materialIndex,t.push(s))}}else{let m=Math.max(0,u.start),y=Math.min(a.count,u.start+u.count);for(let p=m,g=y;p<g;p+=3){let M=a.getX(p),w=a.getX(p+1),b=a.getX(p+2);s=cl(this,o,e,i,c,h,f,M,w,b),s&&(s.faceIndex=Math.floor(p/3),t.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let m=0,y=d.length;m<y;m++){let p=d[m],g=o[p.materialIndex],M=Math.max(p.start,u.start),w=Math.min(l.count,Math.min(p.start+p.count,u.start+u.count));for(let b=M,C=w;b<C;b+=3){let R=b,_=b+1,E=b+2;s=cl(this,g,e,i,c,h,f,R,_,E),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=p.materialIndex,t.push(s))}}else{let m=Math.max(0,u.start),y=Math.min(l.count,u.start+u.count);for(let p=m,g=y;p<g;p+=3){let M=p,w=p+1,b=p+2;s=cl(this,o,e,i,c,h,f,M,w,b),s&&(s.faceIndex=Math.floor(p/3),t.push(s))}}}};function xy(n,e,t,i,s,r,o,a){let l;if(e.side===dn?l=i.intersectTriangle(o,r,s,!0,a):l=i.intersectTriangle(s,r,o,e.side===ls,a),l===null)return null;ll.copy(a),ll.applyMatrix4(n.matrixWorld);let c=t.ray.origin.distanceTo(ll);return c<t.near||c>t.far?null:{distance:c,point:ll.clone(),object:n}}function cl(n,e,t,i,s,r,o,a,l,c){n.getVertexPosition(a,sl),n.getVertexPosition(l,rl),n.getVertexPosition(c,ol);let h=xy(n,e,t,i,sl,rl,ol,hm);if(h){let f=new A;li.getBarycoord(hm,sl,rl,ol,f),s&&(h.uv=li.getInterpolatedAttribute(s,a,l,c,f,new Ee)),r&&(h.uv1=li.getInterpolatedAttribute(r,a,l,c,f,new Ee)),o&&(h.normal=li.getInterpolatedAttribute(o,a,l,c,f,new A),h.normal.dot(i.direction)>0&&h.normal.multiplyScalar(-1));let d={a,b:l,c,normal:new A,materialIndex:0};li.getNormal(sl,rl,ol,d.normal),h.face=d,h.barycoord=f}return h}var Ar=class extends qt{constructor(e=null,t=1,i=1,s,r,o,a,l,c=zt,h=zt,f,d){super(null,o,a,l,c,h,s,r,f,d),this.isDataTexture=!0,this.image={data:e,width:t,height:i},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var Is=new Pn,Sy=new Ee(.5,.5),hl=new A,ts=class{constructor(e=new ln,t=new ln,i=new ln,s=new ln,r=new ln,o=new ln){this.planes=[e,t,i,s,r,o]}set(e,t,i,s,r,o){let a=this.planes;return a[0].copy(e),a[1].copy(t),a[2].copy(i),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(e){let t=this.planes;for(let i=0;i<6;i++)t[i].copy(e.planes[i]);return this}setFromProjectionMatrix(e,t=Bn,i=!1){let s=this.planes,r=e.elements,o=r[0],a=r[1],l=r[2],c=r[3],h=r[4],f=r[5],d=r[6],u=r[7],m=r[8],y=r[9],p=r[10],g=r[11],M=r[12],w=r[13],b=r[14],C=r[15];if(s[0].setComponents(c-o,u-h,g-m,C-M).normalize(),s[1].setComponents(c+o,u+h,g+m,C+M).normalize(),s[2].setComponents(c+a,u+f,g+y,C+w).normalize(),s[3].setComponents(c-a,u-f,g-y,C-w).normalize(),i)s[4].setComponents(l,d,p,b).normalize(),s[5].setComponents(c-l,u-d,g-p,C-b).normalize();else if(s[4].setComponents(c-l,u-d,g-p,C-b).normalize(),t===Bn)s[5].setComponents(c+l,u+d,g+p,C+b).normalize();else if(t===xr)s[5].setComponents(l,d,p,b).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+t);return this}intersectsObject(e){if(e.boundingSphere!==void 0)e.boundingSphere===null&&e.computeBoundingSphere(),Is.copy(e.boundingSphere).applyMatrix4(e.matrixWorld);else{let t=e.geometry;t.boundingSphere===null&&t.computeBoundingSphere(),Is.copy(t.boundingSphere).applyMatrix4(e.matrixWorld)}return this.intersectsSphere(Is)}intersectsSprite(e){Is.center.set(0,0,0);let t=Sy.distanceTo(e.center);return Is.radius=.7071067811865476+t,Is.applyMatrix4(e.matrixWorld),this.intersectsSphere(Is)}intersectsSphere(e){let t=this.planes,i=e.center,s=-e.radius;for(let r=0;r<6;r++)if(t[r].distanceToPoint(i)<s)return!1;return!0}intersectsBox(e){let t=this.planes;for(let i=0;i<6;i++){let s=t[i];if(hl.x=s.normal.x>0?e.max.x:e.min.x,hl.y=s.normal.y>0?e.max.y:e.min.y,hl.z=s.normal.z>0?e.max.z:e.min.z,s.distanceToPoint(hl)<0)return!1}return!0}containsPoint(e){let t=this.planes;for(let i=0;i<6;i++)if(t[i].distanceToPoint(e)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},um=new Ke,Nl=class n{constructor(){this.coordinateSystem=Bn,this._frustums=[],this._count=0}setFromArrayCamera(e){let t=e.cameras,i=this._frustums;for(let s=0;s<t.length;s++){let r=t[s];um.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),i[s]===void 0&&(i[s]=new ts),i[s].setFromProjectionMatrix(um,r.coordinateSystem,r.reversedDepth)}return this._count=t.length,this}getFrustum(e){return this._frustums[e]}intersectsObject(e){let t=this._frustums;for(let i=0;i<this._count;i++)if(t[i].intersectsObject(e))return!0;return!1}intersectsSprite(e){let t=this._frustums;for(let i=0;i<this._count;i++)if(t[i].intersectsSprite(e))return!0;return!1}intersectsSphere(e){let t=this._frustums;for(let i=0;i<this._count;i++)if(t[i].intersectsSphere(e))return!0;return!1}intersectsBox(e){let t=this._frustums;for(let i=0;i<this._count;i++)if(t[i].intersectsBox(e))return!0;return!1}containsPoint(e){let t=this._frustums;for(let i=0;i<this._count;i++)if(t[i].containsPoint(e))return!0;return!1}copy(e){this.coordinateSystem=e.coordinateSystem;let t=this._frustums,i=e._frustums;for(let s=0;s<e._count;s++)t[s]===void 0&&(t[s]=new ts),t[s].copy(i[s]);return this._count=e._count,this}clone(){return new n().copy(this)}};var ui=class extends jn{constructor(e){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new Re(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.linewidth=e.linewidth,this.linecap=e.linecap,this.linejoin=e.linejoin,this.fog=e.fog,this}},Ul=new A,Ol=new A,dm=new Ke,So=new es,ul=new Pn,Ou=new A,fm=new A,Fl=class extends Yt{constructor(e=new Pt,t=new ui){super(),this.isLine=!0,this.type="Line",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,i=[0];for(let s=1,r=t.count;s<r;s++)Ul.fromBufferAttribute(t,s-1),Ol.fromBufferAttribute(t,s),i[s]=i[s-1],i[s]+=Ul.distanceTo(Ol);e.setAttribute("lineDistance",new kt(i,1))}else Ce("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let i=this.geometry,s=this.matrixWorld,r=e.params.Line.threshold,o=i.drawRange;if(i.boundingSphere===null&&i.computeBoundingSphere(),ul.copy(i.boundingSphere),ul.applyMatrix4(s),ul.radius+=r,e.ray.intersectsSphere(ul)===!1)return;dm.copy(s).invert(),So.copy(e.ray).applyMatrix4(dm);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,h=i.index,d=i.attributes.position;if(h!==null){let u=Math.max(0,o.start),m=Math.min(h.count,o.start+o.count);for(let y=u,p=m-1;y<p;y+=c){let g=h.getX(y),M=h.getX(y+1),w=dl(this,e,So,l,g,M,y);w&&t.push(w)}if(this.isLineLoop){let y=h.getX(m-1),p=h.getX(u),g=dl(this,e,So,l,y,p,m-1);g&&t.push(g)}}else{let u=Math.max(0,o.start),m=Math.min(d.count,o.start+o.count);for(let y=u,p=m-1;y<p;y+=c){let g=dl(this,e,So,l,y,y+1,y);g&&t.push(g)}if(this.isLineLoop){let y=dl(this,e,So,l,m-1,u,m-1);y&&t.push(y)}}}updateMorphTargets(){let t=this.geometry.morphAttributes,i=Object.keys(t);if(i.length>0){let s=t[i[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function dl(n,e,t,i,s,r,o){let a=n.geometry.attributes.position;if(Ul.fromBufferAttribute(a,s),Ol.fromBufferAttribute(a,r),t.distanceSqToSegment(Ul,Ol,Ou,fm)>i)return;Ou.applyMatrix4(n.matrixWorld);let c=e.ray.origin.distanceTo(Ou);if(!(c<e.near||c>e.far))return{distance:c,point:fm.clone().applyMatrix4(n.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:n}}var pm=new A,mm=new A,Li=class extends Fl{constructor(e,t){super(e,t),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,i=[];for(let s=0,r=t.count;s<r;s+=2)pm.fromBufferAttribute(t,s),mm.fromBufferAttribute(t,s+1),i[s]=s===0?0:i[s-1],i[s+1]=i[s]+pm.distanceTo(mm);e.setAttribute("lineDistance",new kt(i,1))}else Ce("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var Uo=class extends qt{constructor(e=[],t=Fs,i,s,r,o,a,l,c,h){super(e,t,i,s,r,o,a,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(e){this.image=e}},Oo=class extends qt{constructor(e,t,i,s,r,o,a,l,c){super(e,t,i,s,r,o,a,l,c),this.isCanvasTexture=!0,this.needsUpdate=!0}};var Di=class extends qt{constructor(e,t,i=Qn,s,r,o,a=zt,l=zt,c,h=Ii,f=1){if(h!==Ii&&h!==Oi)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let d={width:e,height:t,depth:f};super(d,s,r,o,a,l,h,i,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(e){return super.copy(e),this.source=new Mr(Object.assign({},e.image)),this.compareFunction=e.compareFunction,this}toJSON(e){let t=super.toJSON(e);return t.compareFunction=this.compareFunction,t}},Fo=class extends Di{constructor(e,t=Qn,i=Fs,s,r,o=zt,a=zt,l,c=Ii){let h={width:e,height:e,depth:1},f=[h,h,h,h,h,h];super(e,e,t,i,s,r,o,a,l,c),this.image=f,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(e){this.image=e}},Bo=class extends qt{constructor(e=null){super(),this.sourceTexture=e,this.isExternalTexture=!0}copy(e){return super.copy(e),this.sourceTexture=e.sourceTexture,this}},Rr=class n extends Pt{constructor(e=1,t=1,i=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:e,height:t,depth:i,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],h=[],f=[],d=0,u=0;m("z","y","x",-1,-1,i,t,e,o,r,0),m("z","y","x",1,-1,i,t,-e,o,r,1),m("x","z","y",1,1,e,i,t,s,o,2),m("x","z","y",1,-1,e,i,-t,s,o,3),m("x","y","z",1,-1,e,t,i,s,r,4),m("x","y","z",-1,-1,e,t,-i,s,r,5),this.setIndex(l),this.setAttribute("position",new kt(c,3)),this.setAttribute("normal",new kt(h,3)),this.setAttribute("uv",new kt(f,2));function m(y,p,g,M,w,b,C,R,_,E,k){let D=b/_,U=C/E,z=b/2,H=C/2,L=R/2,q=_+1,J=E+1,G=0,ne=0,X=new A;for(let Q=0;Q<J;Q++){let ee=Q*U-H;for(let Me=0;Me<q;Me++){let Fe=Me*D-z;X[y]=Fe*M,X[p]=ee*w,X[g]=L,c.push(X.x,X.y,X.z),X[y]=0,X[p]=0,X[g]=R>0?1:-1,h.push(X.x,X.y,X.z),f.push(Me/_),f.push(1-Q/E),G+=1}}for(let Q=0;Q<E;Q++)for(let ee=0;ee<_;ee++){let Me=d+ee+q*Q,Fe=d+ee+q*(Q+1),Z=d+(ee+1)+q*(Q+1),me=d+(ee+1)+q*Q;l.push(Me,Fe,me),l.push(Fe,Z,me),ne+=6}a.addGroup(u,ne,k),u+=ne,d+=G}}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new n(e.width,e.height,e.depth,e.widthSegments,e.heightSegments,e.depthSegments)}};function by(n,e,t=2){let i=e&&e.length,s=i?e[0]*t:n.length,r=fg(n,0,s,t,!0),o=[];if(!r||r.next===r.prev)return o;let a,l,c;if(i&&(r=Ay(n,e,r,t)),n.length>80*t){a=n[0],l=n[1];let h=a,f=l;for(let d=t;d<s;d+=t){let u=n[d],m=n[d+1];u<a&&(a=u),m<l&&(l=m),u>h&&(h=u),m>f&&(f=m)}c=Math.max(h-a,f-l),c=c!==0?32767/c:0}return ko(r,o,t,a,l,c,0),o}function fg(n,e,t,i,s){let r;if(s===By(n,e,t,i)>0)for(let o=e;o<t;o+=i)r=gm(o/i|0,n[o],n[o+1],r);else for(let o=t-i;o>=e;o-=i)r=gm(o/i|0,n[o],n[o+1],r);return r&&Cr(r,r.next)&&(Vo(r),r=r.next),r}function Ls(n,e){if(!n)return n;e||(e=n);let t=n,i;do if(i=!1,!t.steiner&&(Cr(t,t.next)||_t(t.prev,t,t.next)===0)){if(Vo(t),t=e=t.prev,t===t.next)break;i=!0}else t=t.next;while(i||t!==e);return e}function ko(n,e,t,i,s,r,o){if(!n)return;!o&&r&&Ly(n,i,s,r);let a=n;for(;n.prev!==n.next;){let l=n.prev,c=n.next;if(r?wy(n,i,s,r):My(n)){e.push(l.i,n.i,c.i),Vo(n),n=c.next,a=c.next;continue}if(n=c,n===a){o?o===1?(n=Ey(Ls(n),e),ko(n,e,t,i,s,r,2)):o===2&&Ty(n,e,t,i,s,r):ko(Ls(n),e,t,i,s,r,1);break}}}function My(n){let e=n.prev,t=n,i=n.next;if(_t(e,t,i)>=0)return!1;let s=e.x,r=t.x,o=i.x,a=e.y,l=t.y,c=i.y,h=Math.min(s,r,o),f=Math.min(a,l,c),d=Math.max(s,r,o),u=Math.max(a,l,c),m=i.next;for(;m!==e;){if(m.x>=h&&m.x<=d&&m.y>=f&&m.y<=u&&bo(s,a,r,l,o,c,m.x,m.y)&&_t(m.prev,m,m.next)>=0)return!1;m=m.next}return!0}function wy(n,e,t,i){let s=n.prev,r=n,o=n.next;if(_t(s,r,o)>=0)return!1;let a=s.x,l=r.x,c=o.x,h=s.y,f=r.y,d=o.y,u=Math.min(a,l,c),m=Math.min(h,f,d),y=Math.max(a,l,c),p=Math.max(h,f,d),g=Hu(u,m,e,t,i),M=Hu(y,p,e,t,i),w=n.prevZ,b=n.nextZ;for(;w&&w.z>=g&&b&&b.z<=M;){if(w.x>=u&&w.x<=y&&w.y>=m&&w.y<=p&&w!==s&&w!==o&&bo(a,h,l,f,c,d,w.x,w.y)&&_t(w.prev,w,w.next)>=0||(w=w.prevZ,b.x>=u&&b.x<=y&&b.y>=m&&b.y<=p&&b!==s&&b!==o&&bo(a,h,l,f,c,d,b.x,b.y)&&_t(b.prev,b,b.next)>=0))return!1;b=b.nextZ}for(;w&&w.z>=g;){if(w.x>=u&&w.x<=y&&w.y>=m&&w.y<=p&&w!==s&&w!==o&&bo(a,h,l,f,c,d,w.x,w.y)&&_t(w.prev,w,w.next)>=0)return!1;w=w.prevZ}for(;b&&b.z<=M;){if(b.x>=u&&b.x<=y&&b.y>=m&&b.y<=p&&b!==s&&b!==o&&bo(a,h,l,f,c,d,b.x,b.y)&&_t(b.prev,b,b.next)>=0)return!1;b=b.nextZ}return!0}function Ey(n,e){let t=n;do{let i=t.prev,s=t.next.next;!Cr(i,s)&&mg(i,t,t.next,s)&&zo(i,s)&&zo(s,i)&&(e.push(i.i,t.i,s.i),Vo(t),Vo(t.next),t=n=s),t=t.next}while(t!==n);return Ls(t)}function Ty(n,e,t,i,s,r){let o=n;do{let a=o.next.next;for(;a!==o.prev;){if(o.i!==a.i&&Uy(o,a)){let l=gg(o,a);o=Ls(o,o.next),l=Ls(l,l.next),ko(o,e,t,i,s,r,0),ko(l,e,t,i,s,r,0);return}a=a.next}o=o.next}while(o!==n)}function Ay(n,e,t,i){let s=[];for(let r=0,o=e.length;r<o;r++){let a=e[r]*i,l=r<o-1?e[r+1]*i:n.length,c=fg(n,a,l,i,!1);c===c.next&&(c.steiner=!0),s.push(Ny(c))}s.sort(Ry);for(let r=0;r<s.length;r++)t=Cy(s[r],t);return t}function Ry(n,e){let t=n.x-e.x;if(t===0&&(t=n.y-e.y,t===0)){let i=(n.next.y-n.y)/(n.next.x-n.x),s=(e.next.y-e.y)/(e.next.x-e.x);t=i-s}return t}function Cy(n,e){let t=Py(n,e);if(!t)return e;let i=gg(t,n);return Ls(i,i.next),Ls(t,t.next)}function Py(n,e){let t=e,i=n.x,s=n.y,r=-1/0,o;if(Cr(n,t))return t;do{if(Cr(n,t.next))return t.next;if(s<=t.y&&s>=t.next.y&&t.next.y!==t.y){let f=t.x+(s-t.y)*(t.next.x-t.x)/(t.next.y-t.y);if(f<=i&&f>r&&(r=f,o=t.x<t.next.x?t:t.next,f===i))return o}t=t.next}while(t!==e);if(!o)return null;let a=o,l=o.x,c=o.y,h=1/0;t=o;do{if(i>=t.x&&t.x>=l&&i!==t.x&&pg(s<c?i:r,s,l,c,s<c?r:i,s,t.x,t.y)){let f=Math.abs(s-t.y)/(i-t.x);zo(t,n)&&(f<h||f===h&&(t.x>o.x||t.x===o.x&&Iy(o,t)))&&(o=t,h=f)}t=t.next}while(t!==a);return o}function Iy(n,e){return _t(n.prev,n,e.prev)<0&&_t(e.next,n,n.next)<0}function Ly(n,e,t,i){let s=n;do s.z===0&&(s.z=Hu(s.x,s.y,e,t,i)),s.prevZ=s.prev,s.nextZ=s.next,s=s.next;while(s!==n);s.prevZ.nextZ=null,s.prevZ=null,Dy(s)}function Dy(n){let e,t=1;do{let i=n,s;n=null;let r=null;for(e=0;i;){e++;let o=i,a=0;for(let c=0;c<t&&(a++,o=o.nextZ,!!o);c++);let l=t;for(;a>0||l>0&&o;)a!==0&&(l===0||!o||i.z<=o.z)?(s=i,i=i.nextZ,a--):(s=o,o=o.nextZ,l--),r?r.nextZ=s:n=s,s.prevZ=r,r=s;i=o}r.nextZ=null,t*=2}while(e>1);return n}function Hu(n,e,t,i,s){return n=(n-t)*s|0,e=(e-i)*s|0,n=(n|n<<8)&16711935,n=(n|n<<4)&252645135,n=(n|n<<2)&858993459,n=(n|n<<1)&1431655765,e=(e|e<<8)&16711935,e=(e|e<<4)&252645135,e=(e|e<<2)&858993459,e=(e|e<<1)&1431655765,n|e<<1}function Ny(n){let e=n,t=n;do(e.x<t.x||e.x===t.x&&e.y<t.y)&&(t=e),e=e.next;while(e!==n);return t}function pg(n,e,t,i,s,r,o,a){return(s-o)*(e-a)>=(n-o)*(r-a)&&(n-o)*(i-a)>=(t-o)*(e-a)&&(t-o)*(r-a)>=(s-o)*(i-a)}function bo(n,e,t,i,s,r,o,a){return!(n===o&&e===a)&&pg(n,e,t,i,s,r,o,a)}function Uy(n,e){return n.next.i!==e.i&&n.prev.i!==e.i&&!Oy(n,e)&&(zo(n,e)&&zo(e,n)&&Fy(n,e)&&(_t(n.prev,n,e.prev)||_t(n,e.prev,e))||Cr(n,e)&&_t(n.prev,n,n.next)>0&&_t(e.prev,e,e.next)>0)}function _t(n,e,t){return(e.y-n.y)*(t.x-e.x)-(e.x-n.x)*(t.y-e.y)}function Cr(n,e){return n.x===e.x&&n.y===e.y}function mg(n,e,t,i){let s=pl(_t(n,e,t)),r=pl(_t(n,e,i)),o=pl(_t(t,i,n)),a=pl(_t(t,i,e));return!!(s!==r&&o!==a||s===0&&fl(n,t,e)||r===0&&fl(n,i,e)||o===0&&fl(t,n,i)||a===0&&fl(t,e,i))}function fl(n,e,t){return e.x<=Math.max(n.x,t.x)&&e.x>=Math.min(n.x,t.x)&&e.y<=Math.max(n.y,t.y)&&e.y>=Math.min(n.y,t.y)}function pl(n){return n>0?1:n<0?-1:0}function Oy(n,e){let t=n;do{if(t.i!==n.i&&t.next.i!==n.i&&t.i!==e.i&&t.next.i!==e.i&&mg(t,t.next,n,e))return!0;t=t.next}while(t!==n);return!1}function zo(n,e){return _t(n.prev,n,n.next)<0?_t(n,e,n.next)>=0&&_t(n,n.prev,e)>=0:_t(n,e,n.prev)<0||_t(n,n.next,e)<0}function Fy(n,e){let t=n,i=!1,s=(n.x+e.x)/2,r=(n.y+e.y)/2;do t.y>r!=t.next.y>r&&t.next.y!==t.y&&s<(t.next.x-t.x)*(r-t.y)/(t.next.y-t.y)+t.x&&(i=!i),t=t.next;while(t!==n);return i}function gg(n,e){let t=Wu(n.i,n.x,n.y),i=Wu(e.i,e.x,e.y),s=n.next,r=e.prev;return n.next=e,e.prev=n,t.next=s,s.prev=t,i.next=t,t.prev=i,r.next=i,i.prev=r,i}function gm(n,e,t,i){let s=Wu(n,e,t);return i?(s.next=i.next,s.prev=i,i.next.prev=s,i.next=s):(s.prev=s,s.next=s),s}function Vo(n){n.next.prev=n.prev,n.prev.next=n.next,n.prevZ&&(n.prevZ.nextZ=n.nextZ),n.nextZ&&(n.nextZ.prevZ=n.prevZ)}function Wu(n,e,t){return{i:n,x:e,y:t,prev:null,next:null,z:0,prevZ:null,nextZ:null,steiner:!1}}function By(n,e,t,i){let s=0;for(let r=e,o=t-i;r<t;r+=i)s+=(n[o]-n[r])*(n[r+1]+n[o+1]),o=r;return s}var Xu=class{static triangulate(e,t,i=2){return by(e,t,i)}},Ni=class n{static area(e){let t=e.length,i=0;for(let s=t-1,r=0;r<t;s=r++)i+=e[s].x*e[r].y-e[r].x*e[s].y;return i*.5}static isClockWise(e){return n.area(e)<0}static triangulateShape(e,t){let i=[],s=[],r=[];_m(e),vm(i,e);let o=e.length;t.forEach(_m);for(let l=0;l<t.length;l++)s.push(o),o+=t[l].length,vm(i,t[l]);let a=Xu.triangulate(i,s);for(let l=0;l<a.length;l+=3)r.push(a.slice(l,l+3));return r}};function _m(n){let e=n.length;e>2&&n[e-1].equals(n[0])&&n.pop()}function vm(n,e){for(let t=0;t<e.length;t++)n.push(e[t].x),n.push(e[t].y)}var ns=class n extends Pt{constructor(e=1,t=1,i=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:e,height:t,widthSegments:i,heightSegments:s};let r=e/2,o=t/2,a=Math.floor(i),l=Math.floor(s),c=a+1,h=l+1,f=e/a,d=t/l,u=[],m=[],y=[],p=[];for(let g=0;g<h;g++){let M=g*d-o;for(let w=0;w<c;w++){let b=w*f-r;m.push(b,-M,0),y.push(0,0,1),p.push(w/a),p.push(1-g/l)}}for(let g=0;g<l;g++)for(let M=0;M<a;M++){let w=M+c*g,b=M+c*(g+1),C=M+1+c*(g+1),R=M+1+c*g;u.push(w,b,R),u.push(b,C,R)}this.setIndex(u),this.setAttribute("position",new kt(m,3)),this.setAttribute("normal",new kt(y,3)),this.setAttribute("uv",new kt(p,2))}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new n(e.width,e.height,e.widthSegments,e.heightSegments)}};var Go=class extends Pt{constructor(e=null){if(super(),this.type="WireframeGeometry",this.parameters={geometry:e},e!==null){let t=[],i=new Set,s=new A,r=new A;if(e.index!==null){let o=e.attributes.position,a=e.index,l=e.groups;l.length===0&&(l=[{start:0,count:a.count,materialIndex:0}]);for(let c=0,h=l.length;c<h;++c){let f=l[c],d=f.start,u=f.count;for(let m=d,y=d+u;m<y;m+=3)for(let p=0;p<3;p++){let g=a.getX(m+p),M=a.getX(m+(p+1)%3);s.fromBufferAttribute(o,g),r.fromBufferAttribute(o,M),ym(s,r,i)===!0&&(t.push(s.x,s.y,s.z),t.push(r.x,r.y,r.z))}}}else{let o=e.attributes.position;for(let a=0,l=o.count/3;a<l;a++)for(let c=0;c<3;c++){let h=3*a+c,f=3*a+(c+1)%3;s.fromBufferAttribute(o,h),r.fromBufferAttribute(o,f),ym(s,r,i)===!0&&(t.push(s.x,s.y,s.z),t.push(r.x,r.y,r.z))}}this.setAttribute("position",new kt(t,3))}}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}};function ym(n,e,t){let i=`${n.x},${n.y},${n.z}-${e.x},${e.y},${e.z}`,s=`${e.x},${e.y},${e.z}-${n.x},${n.y},${n.z}`;return t.has(i)===!0||t.has(s)===!0?!1:(t.add(i),t.add(s),!0)}var Ho=class extends jn{constructor(e){super(),this.isShadowMaterial=!0,this.type="ShadowMaterial",this.color=new Re(0),this.transparent=!0,this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.fog=e.fog,this}};function ks(n){let e={};for(let t in n){e[t]={};for(let i in n[t]){let s=n[t][i];if(xm(s))s.isRenderTargetTexture?(Ce("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),e[t][i]=null):e[t][i]=s.clone();else if(Array.isArray(s))if(xm(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();e[t][i]=r}else e[t][i]=s.slice();else e[t][i]=s}}return e}function sn(n){let e={};for(let t=0;t<n.length;t++){let i=ks(n[t]);for(let s in i)e[s]=i[s]}return e}function xm(n){return n&&(n.isColor||n.isMatrix3||n.isMatrix4||n.isVector2||n.isVector3||n.isVector4||n.isTexture||n.isQuaternion)}function ky(n){let e=[];for(let t=0;t<n.length;t++)e.push(n[t].clone());return e}function Td(n){let e=n.getRenderTarget();return e===null?n.outputColorSpace:e.isXRRenderTarget===!0?e.texture.colorSpace:Ze.workingColorSpace}var ca={clone:ks,merge:sn},zy=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,Vy=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,vn=class extends jn{constructor(e){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=zy,this.fragmentShader=Vy,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,e!==void 0&&this.setValues(e)}copy(e){return super.copy(e),this.fragmentShader=e.fragmentShader,this.vertexShader=e.vertexShader,this.uniforms=ks(e.uniforms),this.uniformsGroups=ky(e.uniformsGroups),this.defines=Object.assign({},e.defines),this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.fog=e.fog,this.lights=e.lights,this.clipping=e.clipping,this.extensions=Object.assign({},e.extensions),this.glslVersion=e.glslVersion,this.defaultAttributeValues=Object.assign({},e.defaultAttributeValues),this.index0AttributeName=e.index0AttributeName,this.uniformsNeedUpdate=e.uniformsNeedUpdate,this}toJSON(e){let t=super.toJSON(e);t.glslVersion=this.glslVersion,t.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?t.uniforms[s]={type:"t",value:o.toJSON(e).uuid}:o&&o.isColor?t.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?t.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?t.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?t.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?t.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?t.uniforms[s]={type:"m4",value:o.toArray()}:t.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(t.defines=this.defines),t.vertexShader=this.vertexShader,t.fragmentShader=this.fragmentShader,t.lights=this.lights,t.clipping=this.clipping;let i={};for(let s in this.extensions)this.extensions[s]===!0&&(i[s]=!0);return Object.keys(i).length>0&&(t.extensions=i),t}fromJSON(e,t){if(super.fromJSON(e,t),e.uniforms!==void 0)for(let i in e.uniforms){let s=e.uniforms[i];switch(this.uniforms[i]={},s.type){case"t":this.uniforms[i].value=t[s.value]||null;break;case"c":this.uniforms[i].value=new Re().setHex(s.value);break;case"v2":this.uniforms[i].value=new Ee().fromArray(s.value);break;case"v3":this.uniforms[i].value=new A().fromArray(s.value);break;case"v4":this.uniforms[i].value=new tt().fromArray(s.value);break;case"m3":this.uniforms[i].value=new Ue().fromArray(s.value);break;case"m4":this.uniforms[i].value=new Ke().fromArray(s.value);break;default:this.uniforms[i].value=s.value}}if(e.defines!==void 0&&(this.defines=e.defines),e.vertexShader!==void 0&&(this.vertexShader=e.vertexShader),e.fragmentShader!==void 0&&(this.fragmentShader=e.fragmentShader),e.glslVersion!==void 0&&(this.glslVersion=e.glslVersion),e.extensions!==void 0)for(let i in e.extensions)this.extensions[i]=e.extensions[i];return e.lights!==void 0&&(this.lights=e.lights),e.clipping!==void 0&&(this.clipping=e.clipping),this}},Bl=class extends vn{constructor(e){super(e),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}},Wo=class extends jn{constructor(e){super(),this.isMeshStandardMaterial=!0,this.type="MeshStandardMaterial",this.defines={STANDARD:""},this.color=new Re(16777215),this.roughness=1,this.metalness=0,this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new Re(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=la,this.normalScale=new Ee(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.roughnessMap=null,this.metalnessMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new hi,this.envMapIntensity=1,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.defines={STANDARD:""},this.color.copy(e.color),this.roughness=e.roughness,this.metalness=e.metalness,this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.emissive.copy(e.emissive),this.emissiveMap=e.emissiveMap,this.emissiveIntensity=e.emissiveIntensity,this.bumpMap=e.bumpMap,this.bumpScale=e.bumpScale,this.normalMap=e.normalMap,this.normalMapType=e.normalMapType,this.normalScale.copy(e.normalScale),this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.roughnessMap=e.roughnessMap,this.metalnessMap=e.metalnessMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.envMapIntensity=e.envMapIntensity,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.flatShading=e.flatShading,this.fog=e.fog,this}};var Xo=class extends jn{constructor(e){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new Re(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new Re(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=la,this.normalScale=new Ee(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new hi,this.combine=Ql,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.emissive.copy(e.emissive),this.emissiveMap=e.emissiveMap,this.emissiveIntensity=e.emissiveIntensity,this.bumpMap=e.bumpMap,this.bumpScale=e.bumpScale,this.normalMap=e.normalMap,this.normalMapType=e.normalMapType,this.normalScale.copy(e.normalScale),this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.specularMap=e.specularMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.combine=e.combine,this.reflectivity=e.reflectivity,this.envMapIntensity=e.envMapIntensity,this.refractionRatio=e.refractionRatio,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.flatShading=e.flatShading,this.fog=e.fog,this}},kl=class extends jn{constructor(e){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=eg,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(e)}copy(e){return super.copy(e),this.depthPacking=e.depthPacking,this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this}},zl=class extends jn{constructor(e){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(e)}copy(e){return super.copy(e),this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this}};function dr(n,e){return!n||n.constructor===e?n:typeof e.BYTES_PER_ELEMENT=="number"?new e(n):Array.prototype.slice.call(n)}function ml(n){return n!==void 0&&n.inTangents!==void 0&&n.outTangents!==void 0}var is=class{constructor(e,t,i,s){this.parameterPositions=e,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new t.constructor(i),this.sampleValues=t,this.valueSize=i,this.settings=null,this.DefaultSettings_={}}evaluate(e){let t=this.parameterPositions,i=this._cachedIndex,s=t[i],r=t[i-1];e:{t:{let o;n:{i:if(!(e<s)){for(let a=i+2;;){if(s===void 0){if(e<r)break i;return i=t.length,this._cachedIndex=i,this.copySampleValue_(i-1)}if(i===a)break;if(r=s,s=t[++i],e<s)break t}o=t.length;break n}if(!(e>=r)){let a=t[1];e<a&&(i=2,r=a);for(let l=i-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(i===l)break;if(s=r,r=t[--i-1],e>=r)break t}o=i,i=0;break n}break e}for(;i<o;){let a=i+o>>>1;e<t[a]?o=a:i=a+1}if(s=t[i],r=t[i-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return i=t.length,this._cachedIndex=i,this.copySampleValue_(i-1)}this._cachedIndex=i,this.intervalChanged_(i,r,s)}return this.interpolate_(i,r,e,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(e){let t=this.resultBuffer,i=this.sampleValues,s=this.valueSize,r=e*s;for(let o=0;o!==s;++o)t[o]=i[r+o];return t}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Vl=class extends is{constructor(e,t,i,s){super(e,t,i,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:zu,endingEnd:zu}}intervalChanged_(e,t,i){let s=this.parameterPositions,r=e-2,o=e+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case Vu:r=e,a=2*t-i;break;case Gu:r=s.length-2,a=t+s[r]-s[r+1];break;default:r=e,a=i}if(l===void 0)switch(this.getSettings_().endingEnd){case Vu:o=e,l=2*i-t;break;case Gu:o=1,l=i+s[1]-s[0];break;default:o=e-1,l=t}let c=(i-t)*.5,h=this.valueSize;this._weightPrev=c/(t-a),this._weightNext=c/(l-i),this._offsetPrev=r*h,this._offsetNext=o*h}interpolate_(e,t,i,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=e*a,c=l-a,h=this._offsetPrev,f=this._offsetNext,d=this._weightPrev,u=this._weightNext,m=(i-t)/(s-t),y=m*m,p=y*m,g=-d*p+2*d*y-d*m,M=(1+d)*p+(-1.5-2*d)*y+(-.5+d)*m+1,w=(-1-u)*p+(1.5+u)*y+.5*m,b=u*p-u*y;for(let C=0;C!==a;++C)r[C]=g*o[h+C]+M*o[c+C]+w*o[l+C]+b*o[f+C];return r}},Gl=class extends is{constructor(e,t,i,s){super(e,t,i,s)}interpolate_(e,t,i,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=e*a,c=l-a,h=(i-t)/(s-t),f=1-h;for(let d=0;d!==a;++d)r[d]=o[c+d]*f+o[l+d]*h;return r}},Hl=class extends is{constructor(e,t,i,s){super(e,t,i,s)}interpolate_(e){return this.copySampleValue_(e-1)}},Wl=class extends is{interpolate_(e,t,i,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=e*a,c=l-a,h=this.inTangents,f=this.outTangents;if(!h||!f){let m=(i-t)/(s-t),y=1-m;for(let p=0;p!==a;++p)r[p]=o[c+p]*y+o[l+p]*m;return r}let d=a*2,u=e-1;for(let m=0;m!==a;++m){let y=o[c+m],p=o[l+m],g=u*d+m*2,M=f[g],w=f[g+1],b=e*d+m*2,C=h[b],R=h[b+1],_=Hy(i,t,M,C,s);r[m]=_g(_,y,w,R,p)}return r}};function _g(n,e,t,i,s){let r=1-n;return r*r*r*e+3*r*r*n*t+3*r*n*n*i+n*n*n*s}function Gy(n,e,t,i,s){let r=1-n;return 3*r*r*(t-e)+6*r*n*(i-t)+3*n*n*(s-i)}function Hy(n,e,t,i,s){let r=(n-e)/(s-e);for(let o=0;o<8;o++){let a=_g(r,e,t,i,s)-n;if(Math.abs(a)<1e-10)break;let l=Gy(r,e,t,i,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var In=class{constructor(e,t,i,s){if(e===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(t===void 0||t.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+e);this.name=e,this.times=dr(t,this.TimeBufferType),this.values=dr(i,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(e){let t=e.constructor,i;if(t.toJSON!==this.toJSON)i=t.toJSON(e);else{i={name:e.name,times:dr(e.times,Array),values:dr(e.values,Array)};let s=e.getInterpolation();s!==e.DefaultInterpolation&&(i.interpolation=s),ml(e.settings)&&(i.settings={inTangents:dr(e.settings.inTangents,Array),outTangents:dr(e.settings.outTangents,Array)})}return i.type=e.ValueTypeName,i}InterpolantFactoryMethodDiscrete(e){return new Hl(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodLinear(e){return new Gl(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodSmooth(e){return new Vl(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodBezier(e){let t=new Wl(this.times,this.values,this.getValueSize(),e);return this.settings&&(t.inTangents=this.settings.inTangents,t.outTangents=this.settings.outTangents),t}setInterpolation(e){let t;switch(e){case To:t=this.InterpolantFactoryMethodDiscrete;break;case Cl:t=this.InterpolantFactoryMethodLinear;break;case yl:t=this.InterpolantFactoryMethodSmooth;break;case ku:t=this.InterpolantFactoryMethodBezier;break}if(t===void 0){let i="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(e!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(i);return Ce("KeyframeTrack:",i),this}return this.createInterpolant=t,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return To;case this.InterpolantFactoryMethodLinear:return Cl;case this.InterpolantFactoryMethodSmooth:return yl;case this.InterpolantFactoryMethodBezier:return ku}}getValueSize(){return this.values.length/this.times.length}shift(e){if(e!==0){let t=this.times;for(let i=0,s=t.length;i!==s;++i)t[i]+=e;ml(this.settings)&&(Sm(this.settings.inTangents,e),Sm(this.settings.outTangents,e))}return this}scale(e){if(e!==1){let t=this.times;for(let i=0,s=t.length;i!==s;++i)t[i]*=e;ml(this.settings)&&(bm(this.settings.inTangents,e),bm(this.settings.outTangents,e))}return this}trim(e,t){let i=this.times,s=i.length,r=0,o=s-1;for(;r!==s&&i[r]<e;)++r;for(;o!==-1&&i[o]>t;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=i.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let e=!0,t=this.getValueSize();t-Math.floor(t)!==0&&(De("KeyframeTrack: Invalid value size in track.",this),e=!1);let i=this.times,s=this.values,r=i.length;r===0&&(De("KeyframeTrack: Track is empty.",this),e=!1);let o=null;for(let a=0;a!==r;a++){let l=i[a];if(typeof l=="number"&&isNaN(l)){De("KeyframeTrack: Time is not a valid number.",this,a,l),e=!1;break}if(o!==null&&o>l){De("KeyframeTrack: Out of order keys.",this,a,l,o),e=!1;break}o=l}if(s!==void 0&&Gv(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){De("KeyframeTrack: Value is not a valid number.",this,a,c),e=!1;break}}return e}optimize(){let e=this.times.slice(),t=this.values.slice(),i=this.getValueSize(),s=this.getInterpolation()===yl,r=e.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=e[a],h=e[a+1];if(c!==h&&(a!==1||c!==e[0]))if(s)l=!0;else{let f=a*i,d=f-i,u=f+i;for(let m=0;m!==i;++m){let y=t[f+m];if(y!==t[d+m]||y!==t[u+m]){l=!0;break}}}if(l){if(a!==o){e[o]=e[a];let f=a*i,d=o*i;for(let u=0;u!==i;++u)t[d+u]=t[f+u]}++o}}if(r>0){e[o]=e[r];for(let a=r*i,l=o*i,c=0;c!==i;++c)t[l+c]=t[a+c];++o}return o!==e.length?(this.times=e.slice(0,o),this.values=t.slice(0,o*i)):(this.times=e,this.values=t),this}clone(){let e=this.times.slice(),t=this.values.slice(),i=this.constructor,s=new i(this.name,e,t);return s.createInterpolant=this.createInterpolant,ml(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function Sm(n,e){for(let t=0,i=n.length;t!==i;t+=2)n[t]+=e}function bm(n,e){for(let t=0,i=n.length;t!==i;t+=2)n[t]*=e}In.prototype.ValueTypeName="";In.prototype.TimeBufferType=Float32Array;In.prototype.ValueBufferType=Float32Array;In.prototype.DefaultInterpolation=Cl;var ss=class extends In{constructor(e,t,i){super(e,t,i)}};ss.prototype.ValueTypeName="bool";ss.prototype.ValueBufferType=Array;ss.prototype.DefaultInterpolation=To;ss.prototype.InterpolantFactoryMethodLinear=void 0;ss.prototype.InterpolantFactoryMethodSmooth=void 0;var Xl=class extends In{constructor(e,t,i,s){super(e,t,i,s)}};Xl.prototype.ValueTypeName="color";var ql=class extends In{constructor(e,t,i,s){super(e,t,i,s)}};ql.prototype.ValueTypeName="number";var Yl=class extends is{constructor(e,t,i,s){super(e,t,i,s)}interpolate_(e,t,i,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(i-t)/(s-t),c=e*a;for(let h=c+a;c!==h;c+=4)Rn.slerpFlat(r,0,o,c-a,o,c,l);return r}},qo=class extends In{constructor(e,t,i,s){super(e,t,i,s)}InterpolantFactoryMethodLinear(e){return new Yl(this.times,this.values,this.getValueSize(),e)}};qo.prototype.ValueTypeName="quaternion";qo.prototype.InterpolantFactoryMethodSmooth=void 0;var rs=class extends In{constructor(e,t,i){super(e,t,i)}};rs.prototype.ValueTypeName="string";rs.prototype.ValueBufferType=Array;rs.prototype.DefaultInterpolation=To;rs.prototype.InterpolantFactoryMethodLinear=void 0;rs.prototype.InterpolantFactoryMethodSmooth=void 0;var $l=class extends In{constructor(e,t,i,s){super(e,t,i,s)}};$l.prototype.ValueTypeName="vector";var Zl=class{constructor(e,t,i){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=e,this.onProgress=t,this.onError=i,this._abortController=null,this.itemStart=function(h){a++,r===!1&&s.onStart!==void 0&&s.onStart(h,o,a),r=!0},this.itemEnd=function(h){o++,s.onProgress!==void 0&&s.onProgress(h,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,f){return c.push(h,f),this},this.removeHandler=function(h){let f=c.indexOf(h);return f!==-1&&c.splice(f,2),this},this.getHandler=function(h){for(let f=0,d=c.length;f<d;f+=2){let u=c[f],m=c[f+1];if(u.global&&(u.lastIndex=0),u.test(h))return m}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},vg=new Zl,Kl=class{constructor(e){this.manager=e!==void 0?e:vg,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(e,t){let i=this;return new Promise(function(s,r){i.load(e,s,t,r)})}parse(){}setCrossOrigin(e){return this.crossOrigin=e,this}setWithCredentials(e){return this.withCredentials=e,this}setPath(e){return this.path=e,this}setResourcePath(e){return this.resourcePath=e,this}setRequestHeader(e){return this.requestHeader=e,this}setPriority(e){return this.priority=e,this}setCache(e){return this.cache=e,this}abort(){return this}};Kl.DEFAULT_MATERIAL_NAME="__DEFAULT";var Yo=class extends Yt{static registerNode(e){this.prototype._lightNode=e}constructor(e,t=1){super(),this.isLight=!0,this.type="Light",this.color=new Re(e),this.intensity=t}copy(e,t){return super.copy(e,t),this.color.copy(e.color),this.intensity=e.intensity,this}toJSON(e){let t=super.toJSON(e);return t.object.color=this.color.getHex(),t.object.intensity=this.intensity,t}},$o=class extends Yo{constructor(e,t,i){super(e,i),this.isHemisphereLight=!0,this.type="HemisphereLight",this.position.copy(Yt.DEFAULT_UP),this.updateMatrix(),this.groundColor=new Re(t)}copy(e,t){return super.copy(e,t),this.groundColor.copy(e.groundColor),this}toJSON(e){let t=super.toJSON(e);return t.object.groundColor=this.groundColor.getHex(),t}},Fu=new Ke,Mm=new A,wm=new A,Jl=class{constructor(e){this.camera=e,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new Ee(512,512),this.mapType=yn,this.map=null,this.mapPass=null,this.matrix=new Ke,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new ts,this._frameExtents=new Ee(1,1),this._viewportCount=1,this._viewports=[new tt(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(e){let t=this.camera;Mm.setFromMatrixPosition(e.matrixWorld),t.position.copy(Mm),wm.setFromMatrixPosition(e.target.matrixWorld),t.lookAt(wm),t.updateMatrixWorld(),this._updateMatrix(t,this.matrix,this._frustum)}_updateMatrix(e,t,i,s){Fu.multiplyMatrices(e.projectionMatrix,e.matrixWorldInverse),i.setFromProjectionMatrix(Fu,e.coordinateSystem,e.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;e.coordinateSystem===xr||e.reversedDepth?t.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):t.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),t.multiply(Fu)}getViewport(e){return this._viewports[e]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(e){return this.camera=e.camera.clone(),this.intensity=e.intensity,this.bias=e.bias,this.radius=e.radius,this.autoUpdate=e.autoUpdate,this.needsUpdate=e.needsUpdate,this.normalBias=e.normalBias,this.blurSamples=e.blurSamples,this.mapSize.copy(e.mapSize),this.mapType=e.mapType,this.biasNode=e.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let e={};return e.intensity=this.intensity,e.bias=this.bias,e.normalBias=this.normalBias,e.radius=this.radius,e.blurSamples=this.blurSamples,e.mapSize=this.mapSize.toArray(),e.mapType=this.mapType,e.camera=this.camera.toJSON(!1).object,delete e.camera.matrix,e}},gl=new A,_l=new Rn,ai=new A,Zo=class extends Yt{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new Ke,this.projectionMatrix=new Ke,this.projectionMatrixInverse=new Ke,this.coordinateSystem=Bn,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(e,t){return super.copy(e,t),this.matrixWorldInverse.copy(e.matrixWorldInverse),this.projectionMatrix.copy(e.projectionMatrix),this.projectionMatrixInverse.copy(e.projectionMatrixInverse),this.coordinateSystem=e.coordinateSystem,this}getWorldDirection(e){return super.getWorldDirection(e).negate()}updateMatrixWorld(e){super.updateMatrixWorld(e),this.matrixWorld.decompose(gl,_l,ai),ai.x===1&&ai.y===1&&ai.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(gl,_l,ai.set(1,1,1)).invert()}updateWorldMatrix(e,t,i=!1){super.updateWorldMatrix(e,t,i),this.matrixWorld.decompose(gl,_l,ai),ai.x===1&&ai.y===1&&ai.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(gl,_l,ai.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Qi=new A,Em=new Ee,Tm=new Ee,cn=class extends Zo{constructor(e=50,t=1,i=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=e,this.zoom=1,this.near=i,this.far=s,this.focus=10,this.aspect=t,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.fov=e.fov,this.zoom=e.zoom,this.near=e.near,this.far=e.far,this.focus=e.focus,this.aspect=e.aspect,this.view=e.view===null?null:Object.assign({},e.view),this.filmGauge=e.filmGauge,this.filmOffset=e.filmOffset,this}setFocalLength(e){let t=.5*this.getFilmHeight()/e;this.fov=br*2*Math.atan(t),this.updateProjectionMatrix()}getFocalLength(){let e=Math.tan(wo*.5*this.fov);return .5*this.getFilmHeight()/e}getEffectiveFOV(){return br*2*Math.atan(Math.tan(wo*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(e,t,i){Qi.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),t.set(Qi.x,Qi.y).multiplyScalar(-e/Qi.z),Qi.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),i.set(Qi.x,Qi.y).multiplyScalar(-e/Qi.z)}getViewSize(e,t){return this.getViewBounds(e,Em,Tm),t.subVectors(Tm,Em)}setViewOffset(e,t,i,s,r,o){this.aspect=e/t,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=i,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=this.near,t=e*Math.tan(wo*.5*this.fov)/this.zoom,i=2*t,s=this.aspect*i,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,t-=o.offsetY*i/c,s*=o.width/l,i*=o.height/c}let a=this.filmOffset;a!==0&&(r+=e*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,t,t-i,e,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.fov=this.fov,t.object.zoom=this.zoom,t.object.near=this.near,t.object.far=this.far,t.object.focus=this.focus,t.object.aspect=this.aspect,this.view!==null&&(t.object.view=Object.assign({},this.view)),t.object.filmGauge=this.filmGauge,t.object.filmOffset=this.filmOffset,t}};var Ds=class extends Zo{constructor(e=-1,t=1,i=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=e,this.right=t,this.top=i,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.left=e.left,this.right=e.right,this.top=e.top,this.bottom=e.bottom,this.near=e.near,this.far=e.far,this.zoom=e.zoom,this.view=e.view===null?null:Object.assign({},e.view),this}setViewOffset(e,t,i,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=i,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=(this.right-this.left)/(2*this.zoom),t=(this.top-this.bottom)/(2*this.zoom),i=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=i-e,o=i+e,a=s+t,l=s-t;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=h*this.view.offsetY,l=a-h*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.zoom=this.zoom,t.object.left=this.left,t.object.right=this.right,t.object.top=this.top,t.object.bottom=this.bottom,t.object.near=this.near,t.object.far=this.far,this.view!==null&&(t.object.view=Object.assign({},this.view)),t}},qu=class extends Jl{constructor(){super(new Ds(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},Ko=class extends Yo{constructor(e,t){super(e,t),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(Yt.DEFAULT_UP),this.updateMatrix(),this.target=new Yt,this.shadow=new qu}dispose(){super.dispose(),this.shadow.dispose()}copy(e){return super.copy(e),this.target=e.target.clone(),this.shadow=e.shadow.clone(),this}toJSON(e){let t=super.toJSON(e);return t.object.shadow=this.shadow.toJSON(),t.object.target=this.target.uuid,t}};var Jo=class extends Pt{constructor(){super(),this.isInstancedBufferGeometry=!0,this.type="InstancedBufferGeometry",this.instanceCount=1/0}copy(e){return super.copy(e),this.instanceCount=e.instanceCount,this}toJSON(){let e=super.toJSON();return e.instanceCount=this.instanceCount,e.isInstancedBufferGeometry=!0,e}};var fr=-90,pr=1,Pr=class extends Yt{constructor(e,t,i){super(),this.type="CubeCamera",this.renderTarget=i,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new cn(fr,pr,e,t);s.layers=this.layers,this.add(s);let r=new cn(fr,pr,e,t);r.layers=this.layers,this.add(r);let o=new cn(fr,pr,e,t);o.layers=this.layers,this.add(o);let a=new cn(fr,pr,e,t);a.layers=this.layers,this.add(a);let l=new cn(fr,pr,e,t);l.layers=this.layers,this.add(l);let c=new cn(fr,pr,e,t);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let e=this.coordinateSystem,t=this.children.concat(),[i,s,r,o,a,l]=t;for(let c of t)this.remove(c);if(e===Bn)i.up.set(0,1,0),i.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(e===xr)i.up.set(0,-1,0),i.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+e);for(let c of t)this.add(c),c.updateMatrixWorld()}update(e,t){this.parent===null&&this.updateMatrixWorld();let{renderTarget:i,activeMipmapLevel:s}=this;this.coordinateSystem!==e.coordinateSystem&&(this.coordinateSystem=e.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,h]=this.children,f=e.getRenderTarget(),d=e.getActiveCubeFace(),u=e.getActiveMipmapLevel(),m=e.xr.enabled;e.xr.enabled=!1;let y=i.texture.mipmapsAutoUpdate;i.texture.mipmapsAutoUpdate=!1;let p=!1;e.isWebGLRenderer===!0?p=e.state.buffers.depth.getReversed():p=e.reversedDepthBuffer,e.setRenderTarget(i,0,s),p&&e.autoClear===!1&&e.clearDepth(),e.render(t,r),e.setRenderTarget(i,1,s),p&&e.autoClear===!1&&e.clearDepth(),e.render(t,o),e.setRenderTarget(i,2,s),p&&e.autoClear===!1&&e.clearDepth(),e.render(t,a),e.setRenderTarget(i,3,s),p&&e.autoClear===!1&&e.clearDepth(),e.render(t,l),e.setRenderTarget(i,4,s),p&&e.autoClear===!1&&e.clearDepth(),e.render(t,c),i.texture.mipmapsAutoUpdate=y,e.setRenderTarget(i,5,s),p&&e.autoClear===!1&&e.clearDepth(),e.render(t,h),e.setRenderTarget(f,d,u),e.xr.enabled=m,i.texture.needsPMREMUpdate=!0}},jl=class extends cn{constructor(e=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=e,this.perCameraFrustumCulled=!1}};var Ad="\\[\\]\\.:\\/",Wy=new RegExp("["+Ad+"]","g"),Rd="[^"+Ad+"]",Xy="[^"+Ad.replace("\\.","")+"]",qy=/((?:WC+[\/:])*)/.source.replace("WC",Rd),Yy=/(WCOD+)?/.source.replace("WCOD",Xy),$y=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",Rd),Zy=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",Rd),Ky=new RegExp("^"+qy+Yy+$y+Zy+"$"),Jy=["material","materials","bones","map"],Yu=class{constructor(e,t,i){let s=i||ht.parseTrackName(t);this._targetGroup=e,this._bindings=e.subscribe_(t,s)}getValue(e,t){this.bind();let i=this._targetGroup.nCachedObjects_,s=this._bindings[i];s!==void 0&&s.getValue(e,t)}setValue(e,t){let i=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=i.length;s!==r;++s)i[s].setValue(e,t)}bind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,i=e.length;t!==i;++t)e[t].bind()}unbind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,i=e.length;t!==i;++t)e[t].unbind()}},ht=class n{constructor(e,t,i){this.path=t,this.parsedPath=i||n.parseTrackName(t),this.node=n.findNode(e,this.parsedPath.nodeName),this.rootNode=e,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(e,t,i){return e&&e.isAnimationObjectGroup?new n.Composite(e,t,i):new n(e,t,i)}static sanitizeNodeName(e){return e.replace(/\s/g,"_").replace(Wy,"")}static parseTrackName(e){let t=Ky.exec(e);if(t===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+e);let i={nodeName:t[2],objectName:t[3],objectIndex:t[4],propertyName:t[5],propertyIndex:t[6]},s=i.nodeName&&i.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=i.nodeName.substring(s+1);Jy.indexOf(r)!==-1&&(i.nodeName=i.nodeName.substring(0,s),i.objectName=r)}if(i.propertyName===null||i.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+e);return i}static findNode(e,t){if(t===void 0||t===""||t==="."||t===-1||t===e.name||t===e.uuid)return e;if(e.skeleton){let i=e.skeleton.getBoneByName(t);if(i!==void 0)return i}if(e.children){let i=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===t||a.uuid===t)return a;let l=i(a.children);if(l)return l}return null},s=i(e.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(e,t){e[t]=this.targetObject[this.propertyName]}_getValue_array(e,t){let i=this.resolvedProperty;for(let s=0,r=i.length;s!==r;++s)e[t++]=i[s]}_getValue_arrayElement(e,t){e[t]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(e,t){this.resolvedProperty.toArray(e,t)}_setValue_direct(e,t){this.targetObject[this.propertyName]=e[t]}_setValue_direct_setNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(e,t){let i=this.resolvedProperty;for(let s=0,r=i.length;s!==r;++s)i[s]=e[t++]}_setValue_array_setNeedsUpdate(e,t){let i=this.resolvedProperty;for(let s=0,r=i.length;s!==r;++s)i[s]=e[t++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(e,t){let i=this.resolvedProperty;for(let s=0,r=i.length;s!==r;++s)i[s]=e[t++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(e,t){this.resolvedProperty[this.propertyIndex]=e[t]}_setValue_arrayElement_setNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(e,t){this.resolvedProperty.fromArray(e,t)}_setValue_fromArray_setNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(e,t){this.bind(),this.getValue(e,t)}_setValue_unbound(e,t){this.bind(),this.setValue(e,t)}bind(){let e=this.node,t=this.parsedPath,i=t.objectName,s=t.propertyName,r=t.propertyIndex;if(e||(e=n.findNode(this.rootNode,t.nodeName),this.node=e),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!e){Ce("PropertyBinding: No target node found for track: "+this.path+".");return}if(i){let c=t.objectIndex;switch(i){case"materials":if(!e.material){De("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.materials){De("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}e=e.material.materials;break;case"bones":if(!e.skeleton){De("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}e=e.skeleton.bones;for(let h=0;h<e.length;h++)if(e[h].name===c){c=h;break}break;case"map":if("map"in e){e=e.map;break}if(!e.material){De("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.map){De("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}e=e.material.map;break;default:if(e[i]===void 0){De("PropertyBinding: Can not bind to objectName of node undefined.",this);return}e=e[i]}if(c!==void 0){if(e[c]===void 0){De("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,e);return}e=e[c]}}let o=e[s];if(o===void 0){let c=t.nodeName;De("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",e);return}let a=this.Versioning.None;this.targetObject=e,e.isMaterial===!0?a=this.Versioning.NeedsUpdate:e.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!e.geometry){De("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!e.geometry.morphAttributes){De("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}e.morphTargetDictionary[r]!==void 0&&(r=e.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};ht.Composite=Yu;ht.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};ht.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};ht.prototype.GetterByBindingType=[ht.prototype._getValue_direct,ht.prototype._getValue_array,ht.prototype._getValue_arrayElement,ht.prototype._getValue_toArray];ht.prototype.SetterByBindingTypeAndVersioning=[[ht.prototype._setValue_direct,ht.prototype._setValue_direct_setNeedsUpdate,ht.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[ht.prototype._setValue_array,ht.prototype._setValue_array_setNeedsUpdate,ht.prototype._setValue_array_setMatrixWorldNeedsUpdate],[ht.prototype._setValue_arrayElement,ht.prototype._setValue_arrayElement_setNeedsUpdate,ht.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[ht.prototype._setValue_fromArray,ht.prototype._setValue_fromArray_setNeedsUpdate,ht.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var VR=new Float32Array(1);var os=class extends Dl{constructor(e,t,i=1){super(e,t),this.isInstancedInterleavedBuffer=!0,this.meshPerAttribute=i}copy(e){return super.copy(e),this.meshPerAttribute=e.meshPerAttribute,this}clone(e){let t=super.clone(e);return t.meshPerAttribute=this.meshPerAttribute,t}toJSON(e){let t=super.toJSON(e);return t.isInstancedInterleavedBuffer=!0,t.meshPerAttribute=this.meshPerAttribute,t}};var Am=new Ke,jo=class{constructor(e,t,i=0,s=1/0){this.ray=new es(e,t),this.near=i,this.far=s,this.camera=null,this.layers=new wr,this.params={Mesh:{},Line:{threshold:1},LOD:{},Points:{threshold:1},Sprite:{}}}set(e,t){this.ray.set(e,t)}setFromCamera(e,t){t.isPerspectiveCamera?(this.ray.origin.setFromMatrixPosition(t.matrixWorld),this.ray.direction.set(e.x,e.y,.5).unproject(t).sub(this.ray.origin).normalize(),this.camera=t):t.isOrthographicCamera?(this.ray.origin.set(e.x,e.y,t.projectionMatrix.elements[14]).unproject(t),this.ray.direction.set(0,0,-1).transformDirection(t.matrixWorld),this.camera=t):De("Raycaster: Unsupported camera type: "+t.type)}setFromXRController(e){return Am.identity().extractRotation(e.matrixWorld),this.ray.origin.setFromMatrixPosition(e.matrixWorld),this.ray.direction.set(0,0,-1).applyMatrix4(Am),this}intersectObject(e,t=!0,i=[]){return $u(e,this,i,t),i.sort(Rm),i}intersectObjects(e,t=!0,i=[]){for(let s=0,r=e.length;s<r;s++)$u(e[s],this,i,t);return i.sort(Rm),i}};function Rm(n,e){return n.distance-e.distance}function $u(n,e,t,i){let s=!0;if(n.layers.test(e.layers)&&n.raycast(e,t)===!1&&(s=!1),s===!0&&i===!0){let r=n.children;for(let o=0,a=r.length;o<a;o++)$u(r[o],e,t,!0)}}var Ir=class{constructor(e=1,t=0,i=0){this.radius=e,this.phi=t,this.theta=i}set(e,t,i){return this.radius=e,this.phi=t,this.theta=i,this}copy(e){return this.radius=e.radius,this.phi=e.phi,this.theta=e.theta,this}makeSafe(){return this.phi=ke(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(e){return this.setFromCartesianCoords(e.x,e.y,e.z)}setFromCartesianCoords(e,t,i){return this.radius=Math.sqrt(e*e+t*t+i*i),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(e,i),this.phi=Math.acos(ke(t/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var Zu=class{static{this.prototype.isMatrix2=!0}constructor(e,t,i,s){this.elements=[1,0,0,1],e!==void 0&&this.set(e,t,i,s)}identity(){return this.set(1,0,0,1),this}fromArray(e,t=0){for(let i=0;i<4;i++)this.elements[i]=e[i+t];return this}set(e,t,i,s){let r=this.elements;return r[0]=e,r[2]=t,r[1]=i,r[3]=s,this}};var Cm=new A,vl=new A,mr=new A,gr=new A,Bu=new A,jy=new A,Qy=new A,Ns=class{constructor(e=new A,t=new A){this.start=e,this.end=t}set(e,t){return this.start.copy(e),this.end.copy(t),this}copy(e){return this.start.copy(e.start),this.end.copy(e.end),this}getCenter(e){return e.addVectors(this.start,this.end).multiplyScalar(.5)}delta(e){return e.subVectors(this.end,this.start)}distanceSq(){return this.start.distanceToSquared(this.end)}distance(){return this.start.distanceTo(this.end)}at(e,t){return this.delta(t).multiplyScalar(e).add(this.start)}closestPointToPointParameter(e,t){Cm.subVectors(e,this.start),vl.subVectors(this.end,this.start);let i=vl.dot(vl);if(i===0)return 0;let r=vl.dot(Cm)/i;return t&&(r=ke(r,0,1)),r}closestPointToPoint(e,t,i){let s=this.closestPointToPointParameter(e,t);return this.delta(i).multiplyScalar(s).add(this.start)}distanceSqToLine3(e,t=jy,i=Qy){let s=10000000000000001e-32,r,o,a=this.start,l=e.start,c=this.end,h=e.end;mr.subVectors(c,a),gr.subVectors(h,l),Bu.subVectors(a,l);let f=mr.dot(mr),d=gr.dot(gr),u=gr.dot(Bu);if(f<=s&&d<=s)return t.copy(a),i.copy(l),t.distanceToSquared(i);if(f<=s)r=0,o=u/d,o=ke(o,0,1);else{let m=mr.dot(Bu);if(d<=s)o=0,r=ke(-m/f,0,1);else{let y=mr.dot(gr),p=f*d-y*y;p!==0?r=ke((y*u-m*d)/p,0,1):r=0,o=(y*r+u)/d,o<0?(o=0,r=ke(-m/f,0,1)):o>1&&(o=1,r=ke((y-m)/f,0,1))}}return t.copy(a).addScaledVector(mr,r),i.copy(l).addScaledVector(gr,o),t.distanceToSquared(i)}applyMatrix4(e){return this.start.applyMatrix4(e),this.end.applyMatrix4(e),this}equals(e){return e.start.equals(this.start)&&e.end.equals(this.end)}clone(){return new this.constructor().copy(this)}};var Qo=class extends Kn{constructor(e,t=null){super(),this.object=e,this.domElement=t,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(e){this.domElement!==null&&this.disconnect(),this.domElement=e}disconnect(){}dispose(){}update(){}};function Cd(n,e,t,i){let s=ex(i);switch(t){case pd:return n*e;case gd:return n*e/s.components*s.byteLength;case oc:return n*e/s.components*s.byteLength;case cs:return n*e*2/s.components*s.byteLength;case ac:return n*e*2/s.components*s.byteLength;case md:return n*e*3/s.components*s.byteLength;case ni:return n*e*4/s.components*s.byteLength;case lc:return n*e*4/s.components*s.byteLength;case na:case ia:return Math.floor((n+3)/4)*Math.floor((e+3)/4)*8;case sa:case ra:return Math.floor((n+3)/4)*Math.floor((e+3)/4)*16;case hc:case dc:return Math.max(n,16)*Math.max(e,8)/4;case cc:case uc:return Math.max(n,8)*Math.max(e,8)/2;case fc:case pc:case gc:case _c:return Math.floor((n+3)/4)*Math.floor((e+3)/4)*8;case mc:case oa:case vc:return Math.floor((n+3)/4)*Math.floor((e+3)/4)*16;case yc:return Math.floor((n+3)/4)*Math.floor((e+3)/4)*16;case xc:return Math.floor((n+4)/5)*Math.floor((e+3)/4)*16;case Sc:return Math.floor((n+4)/5)*Math.floor((e+4)/5)*16;case bc:return Math.floor((n+5)/6)*Math.floor((e+4)/5)*16;case Mc:return Math.floor((n+5)/6)*Math.floor((e+5)/6)*16;case wc:return Math.floor((n+7)/8)*Math.floor((e+4)/5)*16;case Ec:return Math.floor((n+7)/8)*Math.floor((e+5)/6)*16;case Tc:return Math.floor((n+7)/8)*Math.floor((e+7)/8)*16;case Ac:return Math.floor((n+9)/10)*Math.floor((e+4)/5)*16;case Rc:return Math.floor((n+9)/10)*Math.floor((e+5)/6)*16;case Cc:return Math.floor((n+9)/10)*Math.floor((e+7)/8)*16;case Pc:return Math.floor((n+9)/10)*Math.floor((e+9)/10)*16;case Ic:return Math.floor((n+11)/12)*Math.floor((e+9)/10)*16;case Lc:return Math.floor((n+11)/12)*Math.floor((e+11)/12)*16;case Dc:case Nc:case Uc:return Math.ceil(n/4)*Math.ceil(e/4)*16;case Oc:case Fc:return Math.ceil(n/4)*Math.ceil(e/4)*8;case aa:case Bc:return Math.ceil(n/4)*Math.ceil(e/4)*16}throw new Error(`Unable to determine texture byte length for ${t} format.`)}function ex(n){switch(n){case yn:case hd:return{byteLength:1,components:1};case Ur:case ud:case ti:return{byteLength:2,components:1};case sc:case rc:return{byteLength:2,components:4};case Qn:case ic:case ei:return{byteLength:4,components:1};case dd:case fd:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${n}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Ce("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function zg(){let n=null,e=!1,t=null,i=null;function s(r,o){i=n.requestAnimationFrame(s),t(r,o)}return{start:function(){e!==!0&&t!==null&&n!==null&&(i=n.requestAnimationFrame(s),e=!0)},stop:function(){n!==null&&n.cancelAnimationFrame(i),e=!1},setAnimationLoop:function(r){t=r},setContext:function(r){n=r}}}function nx(n){let e=new WeakMap;function t(a,l){let c=a.array,h=a.usage,f=c.byteLength,d=n.createBuffer();n.bindBuffer(l,d),n.bufferData(l,c,h),a.onUploadCallback();let u;if(c instanceof Float32Array)u=n.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)u=n.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?u=n.HALF_FLOAT:u=n.UNSIGNED_SHORT;else if(c instanceof Int16Array)u=n.SHORT;else if(c instanceof Uint32Array)u=n.UNSIGNED_INT;else if(c instanceof Int32Array)u=n.INT;else if(c instanceof Int8Array)u=n.BYTE;else if(c instanceof Uint8Array)u=n.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)u=n.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:d,type:u,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:f}}function i(a,l,c){let h=l.array,f=l.updateRanges;if(n.bindBuffer(c,a),f.length===0)n.bufferSubData(c,0,h);else{f.sort((u,m)=>u.start-m.start);let d=0;for(let u=1;u<f.length;u++){let m=f[d],y=f[u];y.start<=m.start+m.count+1?m.count=Math.max(m.count,y.start+y.count-m.start):(++d,f[d]=y)}f.length=d+1;for(let u=0,m=f.length;u<m;u++){let y=f[u];n.bufferSubData(c,y.start*h.BYTES_PER_ELEMENT,h,y.start,y.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),e.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=e.get(a);l&&(n.deleteBuffer(l.buffer),e.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let h=e.get(a);(!h||h.version<a.version)&&e.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=e.get(a);if(c===void 0)e.set(a,t(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");i(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var ix=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,sx=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,rx=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,ox=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,ax=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,lx=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,cx=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,hx=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,ux=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,dx=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,fx=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,px=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,mx=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,gx=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,_x=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,vx=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,yx=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,xx=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,Sx=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,bx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,Mx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,wx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,Ex=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,Tx=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,Ax=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,Rx=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Cx=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,Px=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,Ix=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,Lx="gl_FragColor = linearToOutputTexel( gl_FragColor );",Dx=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,Nx=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,Ux=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,Ox=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,Fx=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,Bx=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,kx=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,zx=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,Vx=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,Gx=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,Hx=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,Wx=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,Xx=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,qx=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,Yx=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,$x=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,Zx=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,Kx=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,Jx=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,jx=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,Qx=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,eS=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,tS=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,nS=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,iS=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,sS=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,rS=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,oS=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,aS=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,lS=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,cS=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,hS=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,uS=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,dS=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,fS=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,pS=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,mS=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,gS=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,_S=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,vS=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,yS=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,xS=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,SS=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,bS=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,MS=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,wS=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,ES=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,TS=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,AS=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,RS=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,CS=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,PS=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,IS=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,LS=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,DS=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,NS=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,US=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,OS=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,FS=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,BS=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,kS=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,zS=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,VS=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,GS=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,HS=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,WS=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,XS=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,qS=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,YS=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,$S=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,ZS=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,KS=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,JS=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,jS=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,QS=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,eb=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,tb=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,nb=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,ib=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,sb=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,rb=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,ob=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,ab=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,lb=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,cb=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,hb=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,ub=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,db=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,fb=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,pb=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,mb=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,gb=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,_b=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,vb=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,yb=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,xb=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,Sb=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,bb=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,Mb=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,wb=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,Eb=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,Tb=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,Ab=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,Rb=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,Cb=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,Pb=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,Ib=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,Lb=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,Db=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,Nb=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,Ub=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,We={alphahash_fragment:ix,alphahash_pars_fragment:sx,alphamap_fragment:rx,alphamap_pars_fragment:ox,alphatest_fragment:ax,alphatest_pars_fragment:lx,aomap_fragment:cx,aomap_pars_fragment:hx,batching_pars_vertex:ux,batching_vertex:dx,begin_vertex:fx,beginnormal_vertex:px,bsdfs:mx,iridescence_fragment:gx,bumpmap_pars_fragment:_x,clipping_planes_fragment:vx,clipping_planes_pars_fragment:yx,clipping_planes_pars_vertex:xx,clipping_planes_vertex:Sx,color_fragment:bx,color_pars_fragment:Mx,color_pars_vertex:wx,color_vertex:Ex,common:Tx,defaultnormal_vertex:Ax,displacementmap_pars_vertex:Rx,displacementmap_vertex:Cx,emissivemap_fragment:Px,emissivemap_pars_fragment:Ix,colorspace_fragment:Lx,colorspace_pars_fragment:Dx,envmap_fragment:Nx,envmap_common_pars_fragment:Ux,envmap_pars_fragment:Ox,envmap_pars_vertex:Fx,envmap_physical_pars_fragment:$x,envmap_vertex:Bx,fog_vertex:kx,fog_pars_vertex:zx,fog_fragment:Vx,fog_pars_fragment:Gx,gradientmap_pars_fragment:Hx,lightmap_pars_fragment:Wx,lights_lambert_fragment:Xx,lights_lambert_pars_fragment:qx,lights_pars_begin:Yx,lights_toon_fragment:Zx,lights_toon_pars_fragment:Kx,lights_phong_fragment:Jx,lights_phong_pars_fragment:jx,lights_physical_fragment:Qx,lights_physical_pars_fragment:eS,lights_fragment_begin:tS,lights_fragment_maps:nS,lights_fragment_end:iS,lightprobes_pars_fragment:sS,logdepthbuf_fragment:rS,logdepthbuf_pars_fragment:oS,logdepthbuf_pars_vertex:aS,logdepthbuf_vertex:lS,map_fragment:cS,map_pars_fragment:hS,map_particle_fragment:uS,map_particle_pars_fragment:dS,metalnessmap_fragment:fS,metalnessmap_pars_fragment:pS,morphinstance_vertex:mS,morphcolor_vertex:gS,morphnormal_vertex:_S,morphtarget_pars_vertex:vS,morphtarget_vertex:yS,normal_fragment_begin:xS,normal_fragment_maps:SS,normal_pars_fragment:bS,normal_pars_vertex:MS,normal_vertex:wS,normalmap_pars_fragment:ES,clearcoat_normal_fragment_begin:TS,clearcoat_normal_fragment_maps:AS,clearcoat_pars_fragment:RS,iridescence_pars_fragment:CS,opaque_fragment:PS,packing:IS,premultiplied_alpha_fragment:LS,project_vertex:DS,dithering_fragment:NS,dithering_pars_fragment:US,roughnessmap_fragment:OS,roughnessmap_pars_fragment:FS,shadowmap_pars_fragment:BS,shadowmap_pars_vertex:kS,shadowmap_vertex:zS,shadowmask_pars_fragment:VS,skinbase_vertex:GS,skinning_pars_vertex:HS,skinning_vertex:WS,skinnormal_vertex:XS,specularmap_fragment:qS,specularmap_pars_fragment:YS,tonemapping_fragment:$S,tonemapping_pars_fragment:ZS,transmission_fragment:KS,transmission_pars_fragment:JS,uv_pars_fragment:jS,uv_pars_vertex:QS,uv_vertex:eb,worldpos_vertex:tb,background_vert:nb,background_frag:ib,backgroundCube_vert:sb,backgroundCube_frag:rb,cube_vert:ob,cube_frag:ab,depth_vert:lb,depth_frag:cb,distance_vert:hb,distance_frag:ub,equirect_vert:db,equirect_frag:fb,linedashed_vert:pb,linedashed_frag:mb,meshbasic_vert:gb,meshbasic_frag:_b,meshlambert_vert:vb,meshlambert_frag:yb,meshmatcap_vert:xb,meshmatcap_frag:Sb,meshnormal_vert:bb,meshnormal_frag:Mb,meshphong_vert:wb,meshphong_frag:Eb,meshphysical_vert:Tb,meshphysical_frag:Ab,meshtoon_vert:Rb,meshtoon_frag:Cb,points_vert:Pb,points_frag:Ib,shadow_vert:Lb,shadow_frag:Db,sprite_vert:Nb,sprite_frag:Ub},de={common:{diffuse:{value:new Re(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new Ue},alphaMap:{value:null},alphaMapTransform:{value:new Ue},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new Ue}},envmap:{envMap:{value:null},envMapRotation:{value:new Ue},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new Ue}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new Ue}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new Ue},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new Ue},normalScale:{value:new Ee(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new Ue},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new Ue}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new Ue}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new Ue}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new Re(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new Re(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new Ue},alphaTest:{value:0},uvTransform:{value:new Ue}},sprite:{diffuse:{value:new Re(16777215)},opacity:{value:1},center:{value:new Ee(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new Ue},alphaMap:{value:null},alphaMapTransform:{value:new Ue},alphaTest:{value:0}}},fn={basic:{uniforms:sn([de.common,de.specularmap,de.envmap,de.aomap,de.lightmap,de.fog]),vertexShader:We.meshbasic_vert,fragmentShader:We.meshbasic_frag},lambert:{uniforms:sn([de.common,de.specularmap,de.envmap,de.aomap,de.lightmap,de.emissivemap,de.bumpmap,de.normalmap,de.displacementmap,de.fog,de.lights,{emissive:{value:new Re(0)},envMapIntensity:{value:1}}]),vertexShader:We.meshlambert_vert,fragmentShader:We.meshlambert_frag},phong:{uniforms:sn([de.common,de.specularmap,de.envmap,de.aomap,de.lightmap,de.emissivemap,de.bumpmap,de.normalmap,de.displacementmap,de.fog,de.lights,{emissive:{value:new Re(0)},specular:{value:new Re(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:We.meshphong_vert,fragmentShader:We.meshphong_frag},standard:{uniforms:sn([de.common,de.envmap,de.aomap,de.lightmap,de.emissivemap,de.bumpmap,de.normalmap,de.displacementmap,de.roughnessmap,de.metalnessmap,de.fog,de.lights,{emissive:{value:new Re(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:We.meshphysical_vert,fragmentShader:We.meshphysical_frag},toon:{uniforms:sn([de.common,de.aomap,de.lightmap,de.emissivemap,de.bumpmap,de.normalmap,de.displacementmap,de.gradientmap,de.fog,de.lights,{emissive:{value:new Re(0)}}]),vertexShader:We.meshtoon_vert,fragmentShader:We.meshtoon_frag},matcap:{uniforms:sn([de.common,de.bumpmap,de.normalmap,de.displacementmap,de.fog,{matcap:{value:null}}]),vertexShader:We.meshmatcap_vert,fragmentShader:We.meshmatcap_frag},points:{uniforms:sn([de.points,de.fog]),vertexShader:We.points_vert,fragmentShader:We.points_frag},dashed:{uniforms:sn([de.common,de.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:We.linedashed_vert,fragmentShader:We.linedashed_frag},depth:{uniforms:sn([de.common,de.displacementmap]),vertexShader:We.depth_vert,fragmentShader:We.depth_frag},normal:{uniforms:sn([de.common,de.bumpmap,de.normalmap,de.displacementmap,{opacity:{value:1}}]),vertexShader:We.meshnormal_vert,fragmentShader:We.meshnormal_frag},sprite:{uniforms:sn([de.sprite,de.fog]),vertexShader:We.sprite_vert,fragmentShader:We.sprite_frag},background:{uniforms:{uvTransform:{value:new Ue},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:We.background_vert,fragmentShader:We.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new Ue}},vertexShader:We.backgroundCube_vert,fragmentShader:We.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:We.cube_vert,fragmentShader:We.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:We.equirect_vert,fragmentShader:We.equirect_frag},distance:{uniforms:sn([de.common,de.displacementmap,{referencePosition:{value:new A},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:We.distance_vert,fragmentShader:We.distance_frag},shadow:{uniforms:sn([de.lights,de.fog,{color:{value:new Re(0)},opacity:{value:1}}]),vertexShader:We.shadow_vert,fragmentShader:We.shadow_frag}};fn.physical={uniforms:sn([fn.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new Ue},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new Ue},clearcoatNormalScale:{value:new Ee(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new Ue},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new Ue},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new Ue},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new Ue},sheen:{value:0},sheenColor:{value:new Re(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new Ue},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new Ue},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new Ue},transmissionSamplerSize:{value:new Ee},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new Ue},attenuationDistance:{value:0},attenuationColor:{value:new Re(0)},specularColor:{value:new Re(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new Ue},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new Ue},anisotropyVector:{value:new Ee},anisotropyMap:{value:null},anisotropyMapTransform:{value:new Ue}}]),vertexShader:We.meshphysical_vert,fragmentShader:We.meshphysical_frag};var zc={r:0,b:0,g:0},Ob=new Ke,Vg=new Ue;Vg.set(-1,0,0,0,1,0,0,0,1);function Fb(n,e,t,i,s,r){let o=new Re(0),a=s===!0?0:1,l,c,h=null,f=0,d=null;function u(M){let w=M.isScene===!0?M.background:null;if(w&&w.isTexture){let b=M.backgroundBlurriness>0;w=e.get(w,b)}return w}function m(M){let w=!1,b=u(M);b===null?p(o,a):b&&b.isColor&&(p(b,1),w=!0);let C=n.xr.getEnvironmentBlendMode();C==="additive"?t.buffers.color.setClear(0,0,0,1,r):C==="alpha-blend"&&t.buffers.color.setClear(0,0,0,0,r),(n.autoClear||w)&&(t.buffers.depth.setTest(!0),t.buffers.depth.setMask(!0),t.buffers.color.setMask(!0),n.clear(n.autoClearColor,n.autoClearDepth,n.autoClearStencil))}function y(M,w){let b=u(w);b&&b.isCubeTexture?(c===void 0&&(c=new yt(new Rr(1,1,1),new vn({name:"BackgroundCubeMaterial",uniforms:ks(fn.backgroundCube.uniforms),vertexShader:fn.backgroundCube.vertexShader,fragmentShader:fn.backgroundCube.fragmentShader,side:dn,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(C,R,_){this.matrixWorld.copyPosition(_.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),i.update(c)),c.material.uniforms.envMap.value=b,c.material.uniforms.backgroundBlurriness.value=w.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=w.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(Ob.makeRotationFromEuler(w.backgroundRotation)).transpose(),b.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(Vg),c.material.toneMapped=Ze.getTransfer(b.colorSpace)!==st,(h!==b||f!==b.version||d!==n.toneMapping)&&(c.material.needsUpdate=!0,h=b,f=b.version,d=n.toneMapping),c.layers.enableAll(),M.unshift(c,c.geometry,c.material,0,0,null)):b&&b.isTexture&&(l===void 0&&(l=new yt(new ns(2,2),new vn({name:"BackgroundMaterial",uniforms:ks(fn.background.uniforms),vertexShader:fn.background.vertexShader,fragmentShader:fn.background.fragmentShader,side:ls,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),i.update(l)),l.material.uniforms.t2D.value=b,l.material.uniforms.backgroundIntensity.value=w.backgroundIntensity,l.material.toneMapped=Ze.getTransfer(b.colorSpace)!==st,b.matrixAutoUpdate===!0&&b.updateMatrix(),l.material.uniforms.uvTransform.value.copy(b.matrix),(h!==b||f!==b.version||d!==n.toneMapping)&&(l.material.needsUpdate=!0,h=b,f=b.version,d=n.toneMapping),l.layers.enableAll(),M.unshift(l,l.geometry,l.material,0,0,null))}function p(M,w){M.getRGB(zc,Td(n)),t.buffers.color.setClear(zc.r,zc.g,zc.b,w,r)}function g(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(M,w=1){o.set(M),a=w,p(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(M){a=M,p(o,a)},render:m,addToRenderList:y,dispose:g}}function Bb(n,e){let t=n.getParameter(n.MAX_VERTEX_ATTRIBS),i={},s=d(null),r=s,o=!1;function a(U,z,H,L,q){let J=!1,G=f(U,L,H,z);r!==G&&(r=G,c(r.object)),J=u(U,L,H,q),J&&m(U,L,H,q),q!==null&&e.update(q,n.ELEMENT_ARRAY_BUFFER),(J||o)&&(o=!1,b(U,z,H,L),q!==null&&n.bindBuffer(n.ELEMENT_ARRAY_BUFFER,e.get(q).buffer))}function l(){return n.createVertexArray()}function c(U){return n.bindVertexArray(U)}function h(U){return n.deleteVertexArray(U)}function f(U,z,H,L){let q=L.wireframe===!0,J=i[z.id];J===void 0&&(J={},i[z.id]=J);let G=U.isInstancedMesh===!0?U.id:0,ne=J[G];ne===void 0&&(ne={},J[G]=ne);let X=ne[H.id];X===void 0&&(X={},ne[H.id]=X);let Q=X[q];return Q===void 0&&(Q=d(l()),X[q]=Q),Q}function d(U){let z=[],H=[],L=[];for(let q=0;q<t;q++)z[q]=0,H[q]=0,L[q]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:z,enabledAttributes:H,attributeDivisors:L,object:U,attributes:{},index:null}}function u(U,z,H,L){let q=r.attributes,J=z.attributes,G=0,ne=H.getAttributes();for(let X in ne)if(ne[X].location>=0){let ee=q[X],Me=J[X];if(Me===void 0&&(X==="instanceMatrix"&&U.instanceMatrix&&(Me=U.instanceMatrix),X==="instanceColor"&&U.instanceColor&&(Me=U.instanceColor)),ee===void 0||ee.attribute!==Me||Me&&ee.data!==Me.data)return!0;G++}return r.attributesNum!==G||r.index!==L}function m(U,z,H,L){let q={},J=z.attributes,G=0,ne=H.getAttributes();for(let X in ne)if(ne[X].location>=0){let ee=J[X];ee===void 0&&(X==="instanceMatrix"&&U.instanceMatrix&&(ee=U.instanceMatrix),X==="instanceColor"&&U.instanceColor&&(ee=U.instanceColor));let Me={};Me.attribute=ee,ee&&ee.data&&(Me.data=ee.data),q[X]=Me,G++}r.attributes=q,r.attributesNum=G,r.index=L}function y(){let U=r.newAttributes;for(let z=0,H=U.length;z<H;z++)U[z]=0}function p(U){g(U,0)}function g(U,z){let H=r.newAttributes,L=r.enabledAttributes,q=r.attributeDivisors;H[U]=1,L[U]===0&&(n.enableVertexAttribArray(U),L[U]=1),q[U]!==z&&(n.vertexAttribDivisor(U,z),q[U]=z)}function M(){let U=r.newAttributes,z=r.enabledAttributes;for(let H=0,L=z.length;H<L;H++)z[H]!==U[H]&&(n.disableVertexAttribArray(H),z[H]=0)}function w(U,z,H,L,q,J,G){G===!0?n.vertexAttribIPointer(U,z,H,q,J):n.vertexAttribPointer(U,z,H,L,q,J)}function b(U,z,H,L){y();let q=L.attributes,J=H.getAttributes(),G=z.defaultAttributeValues;for(let ne in J){let X=J[ne];if(X.location>=0){let Q=q[ne];if(Q===void 0&&(ne==="instanceMatrix"&&U.instanceMatrix&&(Q=U.instanceMatrix),ne==="instanceColor"&&U.instanceColor&&(Q=U.instanceColor)),Q!==void 0){let ee=Q.normalized,Me=Q.itemSize,Fe=e.get(Q);if(Fe===void 0)continue;let Z=Fe.buffer,me=Fe.type,ye=Fe.bytesPerElement,Pe=me===n.INT||me===n.UNSIGNED_INT||Q.gpuType===ic;if(Q.isInterleavedBufferAttribute){let ge=Q.data,ze=ge.isInterleavedBuffer===!0?ge.stride:ge.itemSize,St=Q.offset;if(ge.isInstancedInterleavedBuffer||ge.isInstancedBufferAttribute){for(let Le=0;Le<X.locationSize;Le++)g(X.location+Le,ge.meshPerAttribute);U.isInstancedMesh!==!0&&L._maxInstanceCount===void 0&&(L._maxInstanceCount=ge.meshPerAttribute*ge.count)}else for(let Le=0;Le<X.locationSize;Le++)p(X.location+Le);n.bindBuffer(n.ARRAY_BUFFER,Z);for(let Le=0;Le<X.locationSize;Le++)w(X.location+Le,Me/X.locationSize,me,ee,ze*ye,(St+Me/X.locationSize*Le)*ye,Pe)}else{if(Q.isInstancedBufferAttribute){for(let ge=0;ge<X.locationSize;ge++)g(X.location+ge,Q.meshPerAttribute);U.isInstancedMesh!==!0&&L._maxInstanceCount===void 0&&(L._maxInstanceCount=Q.meshPerAttribute*Q.count)}else for(let ge=0;ge<X.locationSize;ge++)p(X.location+ge);n.bindBuffer(n.ARRAY_BUFFER,Z);for(let ge=0;ge<X.locationSize;ge++)w(X.location+ge,Me/X.locationSize,me,ee,Me*ye,Me/X.locationSize*ge*ye,Pe)}}else if(G!==void 0){let ee=G[ne];if(ee!==void 0)switch(ee.length){case 2:n.vertexAttrib2fv(X.location,ee);break;case 3:n.vertexAttrib3fv(X.location,ee);break;case 4:n.vertexAttrib4fv(X.location,ee);break;default:n.vertexAttrib1fv(X.location,ee)}}}}M()}function C(){k();for(let U in i){let z=i[U];for(let H in z){let L=z[H];for(let q in L){let J=L[q];for(let G in J)h(J[G].object),delete J[G];delete L[q]}}delete i[U]}}function R(U){if(i[U.id]===void 0)return;let z=i[U.id];for(let H in z){let L=z[H];for(let q in L){let J=L[q];for(let G in J)h(J[G].object),delete J[G];delete L[q]}}delete i[U.id]}function _(U){for(let z in i){let H=i[z];for(let L in H){let q=H[L];if(q[U.id]===void 0)continue;let J=q[U.id];for(let G in J)h(J[G].object),delete J[G];delete q[U.id]}}}function E(U){for(let z in i){let H=i[z],L=U.isInstancedMesh===!0?U.id:0,q=H[L];if(q!==void 0){for(let J in q){let G=q[J];for(let ne in G)h(G[ne].object),delete G[ne];delete q[J]}delete H[L],Object.keys(H).length===0&&delete i[z]}}}function k(){D(),o=!0,r!==s&&(r=s,c(r.object))}function D(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:k,resetDefaultState:D,dispose:C,releaseStatesOfGeometry:R,releaseStatesOfObject:E,releaseStatesOfProgram:_,initAttributes:y,enableAttribute:p,disableUnusedAttributes:M}}function kb(n,e,t){let i;function s(l){i=l}function r(l,c){n.drawArrays(i,l,c),t.update(c,i,1)}function o(l,c,h){h!==0&&(n.drawArraysInstanced(i,l,c,h),t.update(c,i,h))}function a(l,c,h){if(h===0)return;e.get("WEBGL_multi_draw").multiDrawArraysWEBGL(i,l,0,c,0,h);let d=0;for(let u=0;u<h;u++)d+=c[u];t.update(d,i,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function zb(n,e,t,i){let s;function r(){if(s!==void 0)return s;if(e.has("EXT_texture_filter_anisotropic")===!0){let _=e.get("EXT_texture_filter_anisotropic");s=n.getParameter(_.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(_){return!(_!==ni&&i.convert(_)!==n.getParameter(n.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(_){let E=_===ti&&(e.has("EXT_color_buffer_half_float")||e.has("EXT_color_buffer_float"));return!(_!==yn&&_!==ei&&!E&&i.convert(_)!==n.getParameter(n.IMPLEMENTATION_COLOR_READ_TYPE))}function l(_){if(_==="highp"){if(n.getShaderPrecisionFormat(n.VERTEX_SHADER,n.HIGH_FLOAT).precision>0&&n.getShaderPrecisionFormat(n.FRAGMENT_SHADER,n.HIGH_FLOAT).precision>0)return"highp";_="mediump"}return _==="mediump"&&n.getShaderPrecisionFormat(n.VERTEX_SHADER,n.MEDIUM_FLOAT).precision>0&&n.getShaderPrecisionFormat(n.FRAGMENT_SHADER,n.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=t.precision!==void 0?t.precision:"highp",h=l(c);h!==c&&(Ce("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let f=t.reversedDepthBuffer===!0&&e.has("EXT_clip_control"),d=t.logarithmicDepthBuffer===!0&&f===!1;t.reversedDepthBuffer===!0&&f===!1&&Ce("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),t.logarithmicDepthBuffer===!0&&f===!0&&Ce("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let u=n.getParameter(n.MAX_TEXTURE_IMAGE_UNITS),m=n.getParameter(n.MAX_VERTEX_TEXTURE_IMAGE_UNITS),y=n.getParameter(n.MAX_TEXTURE_SIZE),p=n.getParameter(n.MAX_CUBE_MAP_TEXTURE_SIZE),g=n.getParameter(n.MAX_VERTEX_ATTRIBS),M=n.getParameter(n.MAX_VERTEX_UNIFORM_VECTORS),w=n.getParameter(n.MAX_VARYING_VECTORS),b=n.getParameter(n.MAX_FRAGMENT_UNIFORM_VECTORS),C=n.getParameter(n.MAX_SAMPLES),R=n.getParameter(n.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:d,reversedDepthBuffer:f,maxTextures:u,maxVertexTextures:m,maxTextureSize:y,maxCubemapSize:p,maxAttributes:g,maxVertexUniforms:M,maxVaryings:w,maxFragmentUniforms:b,maxSamples:C,samples:R}}function Vb(n){let e=this,t=null,i=0,s=!1,r=!1,o=new ln,a=new Ue,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(f,d){let u=f.length!==0||d||i!==0||s;return s=d,i=f.length,u},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(f,d){t=h(f,d,0)},this.setState=function(f,d,u){let m=f.clippingPlanes,y=f.clipIntersection,p=f.clipShadows,g=n.get(f);if(!s||m===null||m.length===0||r&&!p)r?h(null):c();else{let M=r?0:i,w=M*4,b=g.clippingState||null;l.value=b,b=h(m,d,w,u);for(let C=0;C!==w;++C)b[C]=t[C];g.clippingState=b,this.numIntersection=y?this.numPlanes:0,this.numPlanes+=M}};function c(){l.value!==t&&(l.value=t,l.needsUpdate=i>0),e.numPlanes=i,e.numIntersection=0}function h(f,d,u,m){let y=f!==null?f.length:0,p=null;if(y!==0){if(p=l.value,m!==!0||p===null){let g=u+y*4,M=d.matrixWorldInverse;a.getNormalMatrix(M),(p===null||p.length<g)&&(p=new Float32Array(g));for(let w=0,b=u;w!==y;++w,b+=4)o.copy(f[w]).applyMatrix4(M,a),o.normal.toArray(p,b),p[b+3]=o.constant}l.value=p,l.needsUpdate=!0}return e.numPlanes=y,e.numIntersection=0,p}}var da=class extends un{constructor(e=1,t={}){super(e,e,t),this.isWebGLCubeRenderTarget=!0;let i={width:e,height:e,depth:1},s=[i,i,i,i,i,i];this.texture=new Uo(s),this._setTextureOptions(t),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(e,t){this.texture.type=t.type,this.texture.colorSpace=t.colorSpace,this.texture.generateMipmaps=t.generateMipmaps,this.texture.minFilter=t.minFilter,this.texture.magFilter=t.magFilter;let i={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new Rr(5,5,5),r=new vn({name:"CubemapFromEquirect",uniforms:ks(i.uniforms),vertexShader:i.vertexShader,fragmentShader:i.fragmentShader,side:dn,blending:Us});r.uniforms.tEquirect.value=t;let o=new yt(s,r),a=t.minFilter;return t.minFilter===Ui&&(t.minFilter=hn),new Pr(1,10,this).update(e,o),t.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(e,t=!0,i=!0,s=!0){let r=e.getRenderTarget();for(let o=0;o<6;o++)e.setRenderTarget(this,o),e.clear(t,i,s);e.setRenderTarget(r)}},yg=256,Gb=3,Hb=20,Gg=256,Hg=16,Wb=3,Xb=new A,qb=new Re,Gc=class n{constructor(e){this._renderer=e,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new Pr(1,10,null),this._boxMesh=new yt(new Rr(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(e,t=0,i=.1,s=100,r={}){let{size:o=256,position:a=Xb}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),h=this._getSourceTarget(!0);t>0&&(h.texture.mipmapsAutoUpdate=!1);let f=l.autoClear,d=l.autoClearColor,u=l.autoClearDepth,m=l.autoClearStencil,y=e.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,y===null&&(e.background=l.getClearColor(qb));let p=new Pr(i,s,h);return p.position.copy(a),p.update(l,e),l.autoClear=f,l.autoClearColor=d,l.autoClearDepth=u,l.autoClearStencil=m,e.background=y,t>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,t)),this._applyPMREM(c),c}fromEquirectangular(e,t=null){return this._fromTexture(e,t)}fromCubemap(e,t=null){return this._fromTexture(e,t)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=bg(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Sg(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(e,t){return t>0?1-Math.sqrt(1-e/t):0}_setSize(e){this._cubeSize=Math.max(yg,Md(e))}_fromTexture(e,t){e.mapping===Fs||e.mapping===Nr?this._setSize(e.image.length===0?yg:e.image[0].width||e.image[0].image.width):this._setSize(e.image.width/4);let i=t||this._allocateTarget();return this._textureToCubemap(e),this._applyPMREM(i),i}_allocateTarget(){let e=this._cubeSize,t=xg(e,!1,!1),i=Math.log2(e)-Gb;for(let s=0;s<=i;s++)t.texture.mipmaps.push({width:e>>s,height:e>>s});return t.texture.name="PMREM",t.texture.isPMREMTexture=!0,t}_getSourceTarget(e=!1){let t=this._cubeSize,i=this._sourceTarget;return(i===null||i.width!==t||e&&i.depthBuffer===!1)&&(i!==null&&i.dispose(),this._sourceTarget=xg(t,!0,e)),this._sourceTarget}_compileMaterial(e){this._boxMesh.material=e,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(e,t,i){let s=this._boxMesh,r=this._cubeCamera;s.material=i,r.renderTarget=e,r.activeMipmapLevel=t;let o=e.width>>t;e.viewport.set(0,0,o,o),r.update(this._renderer,s),e.viewport.set(0,0,e.width,e.height)}_textureToCubemap(e){let t;e.mapping===Fs||e.mapping===Nr?(this._cubemapMaterial===null&&(this._cubemapMaterial=bg()),t=this._cubemapMaterial,t.uniforms.flipEnvMap.value=e.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Sg()),t=this._equirectMaterial),t.uniforms.envMap.value=e,this._renderCube(this._getSourceTarget(),0,t)}_applyPMREM(e){this._ggxMaterial===null&&(this._ggxMaterial=Yb(),this._integrationMaterial=$b());let t=this._cubeSize,i=e.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(t/Hg);for(let o=0;o<=i;o++){let a=n.lodToRoughness(o,i);if(o>i-Wb)r.roughness.value=a,this._renderCube(e,o,this._integrationMaterial);else{let l=a>0?Math.log2(t)+.5*Math.log2(6/(Gg*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(e,o,this._ggxMaterial)}}}_blur(e,t){this._blurMaterial===null&&(this._blurMaterial=Zb());let i=this._blurMaterial,s=i.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(t,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(e,0,i),s.envMap.value=e.texture,this._renderCube(r,0,i)}};function xg(n,e,t){return new da(n,{minFilter:Ui,generateMipmaps:e,type:ti,colorSpace:Ao,depthBuffer:t})}function fa(n,e,t){return new vn({name:n,uniforms:e,vertexShader:We.cube_vert,fragmentShader:t,side:dn,blending:Us,depthTest:!1,depthWrite:!1})}function Yb(){return fa("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${Gg}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function $b(){return fa("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Hg}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function Zb(){return fa("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${Hb}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function Sg(){return fa("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function bg(){return fa("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function Kb(n){let e=new WeakMap,t=new WeakMap,i=null;function s(d,u=!1){return d==null?null:u?o(d):r(d)}function r(d){if(d&&d.isTexture){let u=d.mapping;if(u===ec||u===tc)if(e.has(d)){let m=e.get(d).texture;return a(m,d.mapping)}else{let m=d.image;if(m&&m.height>0){let y=new da(m.height);return y.fromEquirectangularTexture(n,d),e.set(d,y),d.addEventListener("dispose",c),a(y.texture,d.mapping)}else return null}}return d}function o(d){if(d&&d.isTexture&&d.isPMREMTexture!==!0){let u=d.mapping,m=u===ec||u===tc,y=u===Fs||u===Nr;if(m||y){let p=t.get(d),g=p!==void 0?p.texture.pmremVersion:0;if(d.isRenderTargetTexture&&d.pmremVersion!==g)return i===null&&(i=new Gc(n)),p=m?i.fromEquirectangular(d,p):i.fromCubemap(d,p),p.texture.pmremVersion=d.pmremVersion,t.set(d,p),p.texture;if(p!==void 0)return p.texture;{let M=d.image;return m&&M&&M.height>0||y&&M&&l(M)?(i===null&&(i=new Gc(n)),p=m?i.fromEquirectangular(d):i.fromCubemap(d),p.texture.pmremVersion=d.pmremVersion,t.set(d,p),d.addEventListener("dispose",h),p.texture):null}}}return d}function a(d,u){return u===ec?d.mapping=Fs:u===tc&&(d.mapping=Nr),d}function l(d){let u=0,m=6;for(let y=0;y<m;y++)d[y]!==void 0&&u++;return u===m}function c(d){let u=d.target;u.removeEventListener("dispose",c);let m=e.get(u);m!==void 0&&(e.delete(u),m.dispose())}function h(d){let u=d.target;u.removeEventListener("dispose",h);let m=t.get(u);m!==void 0&&(t.delete(u),m.dispose())}function f(){e=new WeakMap,t=new WeakMap,i!==null&&(i.dispose(),i=null)}return{get:s,dispose:f}}function Jb(n){let e={};function t(i){if(e[i]!==void 0)return e[i];let s=n.getExtension(i);return e[i]=s,s}return{has:function(i){return t(i)!==null},init:function(){t("EXT_color_buffer_float"),t("WEBGL_clip_cull_distance"),t("OES_texture_float_linear"),t("EXT_color_buffer_half_float"),t("WEBGL_multisampled_render_to_texture"),t("WEBGL_render_shared_exponent")},get:function(i){let s=t(i);return s===null&&Mo("WebGLRenderer: "+i+" extension not supported."),s}}}function jb(n,e,t,i){let s={},r=new WeakMap,o=new FinalizationRegistry(m=>delete s[m]);function a(m){l(m.target)}function l(m){m.index!==null&&e.remove(m.index);for(let p in m.attributes)e.remove(m.attributes[p]);m.removeEventListener("dispose",a),delete s[m.id],o.unregister(m);let y=r.get(m);y&&(e.remove(y),r.delete(m)),i.releaseStatesOfGeometry(m),m.isInstancedBufferGeometry===!0&&delete m._maxInstanceCount,t.memory.geometries--}function c(m,y){return s[y.id]!==void 0||(y.addEventListener("dispose",a),s[y.id]=new WeakRef(y),o.register(y,y.id,y),t.memory.geometries++),y}function h(m){let y=m.attributes;for(let p in y)e.update(y[p],n.ARRAY_BUFFER)}function f(m){let y=m.index,p=m.attributes.position,g=0;if(p===void 0)return;let M=y!==null?y.array.length:p.array.length/3-1,w=p.count>=65535?No:Do,b=new w(Math.ceil(M/3)*6,1),C=b.array;if(y!==null){let _=y.array;g=y.version;for(let E=0,k=0;E<M;E+=3){let D=_[E+0],U=_[E+1],z=_[E+2];C[k++]=D,C[k++]=U,C[k++]=U,C[k++]=z,C[k++]=z,C[k++]=D}}else{g=p.version;for(let _=0,E=0;_<M;_+=3){let k=_+0,D=_+1,U=_+2;C[E++]=k,C[E++]=D,C[E++]=D,C[E++]=U,C[E++]=U,C[E++]=k}}b.version=g;let R=r.get(m);R&&e.remove(R),r.set(m,b)}function d(m){let y=r.get(m);if(y){let p=m.index;p!==null&&y.version<p.version&&f(m)}else f(m);return r.get(m)}function u(){for(let m in s){let y=s[m].deref();y!==void 0&&l(y)}}return{get:c,update:h,getWireframeAttribute:d,dispose:u}}function Qb(n,e,t){let i;function s(f){i=f}let r,o;function a(f){r=f.type,o=f.bytesPerElement}function l(f,d){n.drawElements(i,d,r,f*o),t.update(d,i,1)}function c(f,d,u){u!==0&&(n.drawElementsInstanced(i,d,r,f*o,u),t.update(d,i,u))}function h(f,d,u){if(u===0)return;e.get("WEBGL_multi_draw").multiDrawElementsWEBGL(i,d,0,r,f,0,u);let y=0;for(let p=0;p<u;p++)y+=d[p];t.update(y,i,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function eM(n){let e={geometries:0,textures:0},t={frame:0,calls:0,triangles:0,points:0,lines:0};function i(r,o,a){switch(t.calls++,o){case n.TRIANGLES:t.triangles+=a*(r/3);break;case n.LINES:t.lines+=a*(r/2);break;case n.LINE_STRIP:t.lines+=a*(r-1);break;case n.LINE_LOOP:t.lines+=a*r;break;case n.POINTS:t.points+=a*r;break;default:De("WebGLInfo: Unknown draw mode:",o);break}}function s(){t.calls=0,t.triangles=0,t.points=0,t.lines=0}return{memory:e,render:t,programs:null,autoReset:!0,reset:s,update:i}}function tM(n,e,t){let i=new WeakMap,s=new tt;function r(o,a,l){let c=o.morphTargetInfluences,h=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,f=h!==void 0?h.length:0,d=i.get(a);if(d===void 0||d.count!==f){let k=function(){_.dispose(),i.delete(a),a.removeEventListener("dispose",k)};d!==void 0&&d.texture.dispose();let u=a.morphAttributes.position!==void 0,m=a.morphAttributes.normal!==void 0,y=a.morphAttributes.color!==void 0,p=a.morphAttributes.position||[],g=a.morphAttributes.normal||[],M=a.morphAttributes.color||[],w=0;u===!0&&(w=1),m===!0&&(w=2),y===!0&&(w=3);let b=a.attributes.position.count*w,C=1;b>e.maxTextureSize&&(C=Math.ceil(b/e.maxTextureSize),b=e.maxTextureSize);let R=new Float32Array(b*C*4*f),_=new Io(R,b,C,f);_.type=ei,_.needsUpdate=!0;let E=w*4;for(let D=0;D<f;D++){let U=p[D],z=g[D],H=M[D],L=b*C*4*D;for(let q=0;q<U.count;q++){let J=q*E;u===!0&&(s.fromBufferAttribute(U,q),R[L+J+0]=s.x,R[L+J+1]=s.y,R[L+J+2]=s.z,R[L+J+3]=0),m===!0&&(s.fromBufferAttribute(z,q),R[L+J+4]=s.x,R[L+J+5]=s.y,R[L+J+6]=s.z,R[L+J+7]=0),y===!0&&(s.fromBufferAttribute(H,q),R[L+J+8]=s.x,R[L+J+9]=s.y,R[L+J+10]=s.z,R[L+J+11]=H.itemSize===4?s.w:1)}}d={count:f,texture:_,size:new Ee(b,C)},i.set(a,d),a.addEventListener("dispose",k)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(n,"morphTexture",o.morphTexture,t);else{let u=0;for(let y=0;y<c.length;y++)u+=c[y];let m=a.morphTargetsRelative?1:1-u;l.getUniforms().setValue(n,"morphTargetBaseInfluence",m),l.getUniforms().setValue(n,"morphTargetInfluences",c)}l.getUniforms().setValue(n,"morphTargetsTexture",d.texture,t),l.getUniforms().setValue(n,"morphTargetsTextureSize",d.size)}return{update:r}}function nM(n,e,t,i,s){let r=new WeakMap;function o(c){let h=s.render.frame,f=c.geometry,d=e.get(c,f);if(r.get(d)!==h&&(e.update(d),r.set(d,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(t.update(c.instanceMatrix,n.ARRAY_BUFFER),c.instanceColor!==null&&t.update(c.instanceColor,n.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let u=c.skeleton;r.get(u)!==h&&(u.update(),r.set(u,h))}return d}function a(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),i.releaseStatesOfObject(h),t.remove(h.instanceMatrix),h.instanceColor!==null&&t.remove(h.instanceColor)}return{update:o,dispose:a}}var iM={[nd]:"LINEAR_TONE_MAPPING",[id]:"REINHARD_TONE_MAPPING",[sd]:"CINEON_TONE_MAPPING",[rd]:"ACES_FILMIC_TONE_MAPPING",[ad]:"AGX_TONE_MAPPING",[ld]:"NEUTRAL_TONE_MAPPING",[od]:"CUSTOM_TONE_MAPPING"};function sM(n,e,t,i,s,r){let o=new un(e,t,{type:n,depthBuffer:s,stencilBuffer:r,samples:i?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,h=new Pt;h.setAttribute("position",new kt([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new kt([0,2,0,0,2,0],2));let f=new Bl({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),d=new yt(h,f),u=new Ds(-1,1,1,-1,0,1),m=null,y=null,p=!1,g,M=null,w=[],b=!1;this.setSize=function(C,R){o.setSize(C,R),a!==null&&a.setSize(C,R),l!==null&&l.setSize(C,R);for(let _=0;_<w.length;_++){let E=w[_];E.setSize&&E.setSize(C,R)}},this.setEffects=function(C){w=C,b=w.length>0&&w[0].isRenderPass===!0;let R=o.width,_=o.height;w.length>0&&a===null&&(a=new un(R,_,{type:ti,depthBuffer:!1,stencilBuffer:!1}),l=new un(R,_,{type:ti,depthBuffer:!1,stencilBuffer:!1}));let E=s===!0&&w.some(k=>k.needsDepthTexture===!0);E!==(o.depthTexture!==null)&&(E===!0&&c===null&&(c=new Di(R,_),r===!0&&(c.format=Oi,c.type=Bs)),o.dispose(),o.depthTexture=E?c:null,o.resolveDepthBuffer=E,o.storeMultisampledDepthBuffer=E);for(let k=0;k<w.length;k++){let D=w[k];D.setSize&&D.setSize(R,_),E&&D.needsDepthTexture===!0&&D.setDepthTexture&&D.setDepthTexture(c)}},this.begin=function(C,R){if(p||C.toneMapping===di&&w.length===0)return!1;if(M=R,R!==null){let _=R.width,E=R.height;(o.width!==_||o.height!==E)&&this.setSize(_,E)}return b===!1&&C.setRenderTarget(o),g=C.toneMapping,C.toneMapping=di,!0},this.hasRenderPass=function(){return b},this.end=function(C,R){C.toneMapping=g,p=!0;let _=o,E=a;for(let k=0;k<w.length;k++){let D=w[k];D.enabled!==!1&&(D.render(C,E,_,R),D.needsSwap!==!1&&(_=E,E=E===a?l:a))}if(m!==C.outputColorSpace||y!==C.toneMapping){m=C.outputColorSpace,y=C.toneMapping,f.defines={},Ze.getTransfer(m)===st&&(f.defines.SRGB_TRANSFER="");let k=iM[y];k&&(f.defines[k]=""),f.needsUpdate=!0}f.uniforms.tDiffuse.value=_.texture,C.setRenderTarget(M),C.render(d,u),M=null,p=!1},this.isCompositing=function(){return p},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),h.dispose(),f.dispose()}}var Wg=new qt,Xg=new Di(1,1),qg=new Fo(1),Yg=new Io,$g=new Ll,Zg=new Uo,Mg=[],wg=[],Eg=new Float32Array(16),Tg=new Float32Array(9),Ag=new Float32Array(4);function Fr(n,e,t){let i=n[0];if(i<=0||i>0)return n;let s=e*t,r=Mg[s];if(r===void 0&&(r=new Float32Array(s),Mg[s]=r),e!==0){i.toArray(r,0);for(let o=1,a=0;o!==e;++o)a+=t,n[o].toArray(r,a)}return r}function It(n,e){if(n.length!==e.length)return!1;for(let t=0,i=n.length;t<i;t++)if(n[t]!==e[t])return!1;return!0}function Lt(n,e){for(let t=0,i=e.length;t<i;t++)n[t]=e[t]}function Wc(n,e){let t=wg[e];t===void 0&&(t=new Int32Array(e),wg[e]=t);for(let i=0;i!==e;++i)t[i]=n.allocateTextureUnit();return t}function rM(n,e){let t=this.cache;t[0]!==e&&(n.uniform1f(this.addr,e),t[0]=e)}function oM(n,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(n.uniform2f(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(It(t,e))return;n.uniform2fv(this.addr,e),Lt(t,e)}}function aM(n,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(n.uniform3f(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else if(e.r!==void 0)(t[0]!==e.r||t[1]!==e.g||t[2]!==e.b)&&(n.uniform3f(this.addr,e.r,e.g,e.b),t[0]=e.r,t[1]=e.g,t[2]=e.b);else{if(It(t,e))return;n.uniform3fv(this.addr,e),Lt(t,e)}}function lM(n,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(n.uniform4f(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(It(t,e))return;n.uniform4fv(this.addr,e),Lt(t,e)}}function cM(n,e){let t=this.cache,i=e.elements;if(i===void 0){if(It(t,e))return;n.uniformMatrix2fv(this.addr,!1,e),Lt(t,e)}else{if(It(t,i))return;Ag.set(i),n.uniformMatrix2fv(this.addr,!1,Ag),Lt(t,i)}}function hM(n,e){let t=this.cache,i=e.elements;if(i===void 0){if(It(t,e))return;n.uniformMatrix3fv(this.addr,!1,e),Lt(t,e)}else{if(It(t,i))return;Tg.set(i),n.uniformMatrix3fv(this.addr,!1,Tg),Lt(t,i)}}function uM(n,e){let t=this.cache,i=e.elements;if(i===void 0){if(It(t,e))return;n.uniformMatrix4fv(this.addr,!1,e),Lt(t,e)}else{if(It(t,i))return;Eg.set(i),n.uniformMatrix4fv(this.addr,!1,Eg),Lt(t,i)}}function dM(n,e){let t=this.cache;t[0]!==e&&(n.uniform1i(this.addr,e),t[0]=e)}function fM(n,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(n.uniform2i(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(It(t,e))return;n.uniform2iv(this.addr,e),Lt(t,e)}}function pM(n,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(n.uniform3i(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if(It(t,e))return;n.uniform3iv(this.addr,e),Lt(t,e)}}function mM(n,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(n.uniform4i(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(It(t,e))return;n.uniform4iv(this.addr,e),Lt(t,e)}}function gM(n,e){let t=this.cache;t[0]!==e&&(n.uniform1ui(this.addr,e),t[0]=e)}function _M(n,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(n.uniform2ui(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(It(t,e))return;n.uniform2uiv(this.addr,e),Lt(t,e)}}function vM(n,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(n.uniform3ui(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if(It(t,e))return;n.uniform3uiv(this.addr,e),Lt(t,e)}}function yM(n,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(n.uniform4ui(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(It(t,e))return;n.uniform4uiv(this.addr,e),Lt(t,e)}}function Xc(n){return n.version===0&&(n.compareFunction=yd,n.needsUpdate=!0),n}function xM(n,e,t){let i=this.cache,s=t.allocateTextureUnit();i[0]!==s&&(n.uniform1i(this.addr,s),i[0]=s);let r;this.type===n.SAMPLER_2D_SHADOW?r=Xc(Xg):r=Wg,t.setTexture2D(e||r,s)}function SM(n,e,t){let i=this.cache,s=t.allocateTextureUnit();i[0]!==s&&(n.uniform1i(this.addr,s),i[0]=s),t.setTexture3D(e||$g,s)}function bM(n,e,t){let i=this.cache,s=t.allocateTextureUnit();i[0]!==s&&(n.uniform1i(this.addr,s),i[0]=s);let r;this.type===n.SAMPLER_CUBE_SHADOW?r=Xc(qg):r=Zg,t.setTextureCube(e||r,s)}function MM(n,e,t){let i=this.cache,s=t.allocateTextureUnit();i[0]!==s&&(n.uniform1i(this.addr,s),i[0]=s),t.setTexture2DArray(e||Yg,s)}function wM(n){switch(n){case 5126:return rM;case 35664:return oM;case 35665:return aM;case 35666:return lM;case 35674:return cM;case 35675:return hM;case 35676:return uM;case 5124:case 35670:return dM;case 35667:case 35671:return fM;case 35668:case 35672:return pM;case 35669:case 35673:return mM;case 5125:return gM;case 36294:return _M;case 36295:return vM;case 36296:return yM;case 35678:case 36198:case 36298:case 36306:case 35682:return xM;case 35679:case 36299:case 36307:return SM;case 35680:case 36300:case 36308:case 36293:return bM;case 36289:case 36303:case 36311:case 36292:return MM}}function EM(n,e){n.uniform1fv(this.addr,e)}function TM(n,e){let t=Fr(e,this.size,2);n.uniform2fv(this.addr,t)}function AM(n,e){let t=Fr(e,this.size,3);n.uniform3fv(this.addr,t)}function RM(n,e){let t=Fr(e,this.size,4);n.uniform4fv(this.addr,t)}function CM(n,e){let t=Fr(e,this.size,4);n.uniformMatrix2fv(this.addr,!1,t)}function PM(n,e){let t=Fr(e,this.size,9);n.uniformMatrix3fv(this.addr,!1,t)}function IM(n,e){let t=Fr(e,this.size,16);n.uniformMatrix4fv(this.addr,!1,t)}function LM(n,e){n.uniform1iv(this.addr,e)}function DM(n,e){n.uniform2iv(this.addr,e)}function NM(n,e){n.uniform3iv(this.addr,e)}function UM(n,e){n.uniform4iv(this.addr,e)}function OM(n,e){n.uniform1uiv(this.addr,e)}function FM(n,e){n.uniform2uiv(this.addr,e)}function BM(n,e){n.uniform3uiv(this.addr,e)}function kM(n,e){n.uniform4uiv(this.addr,e)}function zM(n,e,t){let i=this.cache,s=e.length,r=Wc(t,s);It(i,r)||(n.uniform1iv(this.addr,r),Lt(i,r));let o;this.type===n.SAMPLER_2D_SHADOW?o=Xc(Xg):o=Wg;for(let a=0;a!==s;++a)t.setTexture2D(e[a]||o,r[a])}function VM(n,e,t){let i=this.cache,s=e.length,r=Wc(t,s);It(i,r)||(n.uniform1iv(this.addr,r),Lt(i,r));for(let o=0;o!==s;++o)t.setTexture3D(e[o]||$g,r[o])}function GM(n,e,t){let i=this.cache,s=e.length,r=Wc(t,s);It(i,r)||(n.uniform1iv(this.addr,r),Lt(i,r));let o;this.type===n.SAMPLER_CUBE_SHADOW?o=Xc(qg):o=Zg;for(let a=0;a!==s;++a)t.setTextureCube(e[a]||o,r[a])}function HM(n,e,t){let i=this.cache,s=e.length,r=Wc(t,s);It(i,r)||(n.uniform1iv(this.addr,r),Lt(i,r));for(let o=0;o!==s;++o)t.setTexture2DArray(e[o]||Yg,r[o])}function WM(n){switch(n){case 5126:return EM;case 35664:return TM;case 35665:return AM;case 35666:return RM;case 35674:return CM;case 35675:return PM;case 35676:return IM;case 5124:case 35670:return LM;case 35667:case 35671:return DM;case 35668:case 35672:return NM;case 35669:case 35673:return UM;case 5125:return OM;case 36294:return FM;case 36295:return BM;case 36296:return kM;case 35678:case 36198:case 36298:case 36306:case 35682:return zM;case 35679:case 36299:case 36307:return VM;case 35680:case 36300:case 36308:case 36293:return GM;case 36289:case 36303:case 36311:case 36292:return HM}}var Ld=class{constructor(e,t,i){this.id=e,this.addr=i,this.cache=[],this.type=t.type,this.setValue=wM(t.type)}},Dd=class{constructor(e,t,i){this.id=e,this.addr=i,this.cache=[],this.type=t.type,this.size=t.size,this.setValue=WM(t.type)}},Nd=class{constructor(e){this.id=e,this.seq=[],this.map={}}setValue(e,t,i){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(e,t[a.id],i)}}},Pd=/(\w+)(\])?(\[|\.)?/g;function Rg(n,e){n.seq.push(e),n.map[e.id]=e}function XM(n,e,t){let i=n.name,s=i.length;for(Pd.lastIndex=0;;){let r=Pd.exec(i),o=Pd.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){Rg(t,c===void 0?new Ld(a,n,e):new Dd(a,n,e));break}else{let f=t.map[a];f===void 0&&(f=new Nd(a),Rg(t,f)),t=f}}}var Or=class{constructor(e,t){this.seq=[],this.map={};let i=e.getProgramParameter(t,e.ACTIVE_UNIFORMS);for(let o=0;o<i;++o){let a=e.getActiveUniform(t,o),l=e.getUniformLocation(t,a.name);XM(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===e.SAMPLER_2D_SHADOW||o.type===e.SAMPLER_CUBE_SHADOW||o.type===e.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(e,t,i,s){let r=this.map[t];r!==void 0&&r.setValue(e,i,s)}setOptional(e,t,i){let s=t[i];s!==void 0&&this.setValue(e,i,s)}static upload(e,t,i,s){for(let r=0,o=t.length;r!==o;++r){let a=t[r],l=i[a.id];l.needsUpdate!==!1&&a.setValue(e,l.value,s)}}static seqWithValue(e,t){let i=[];for(let s=0,r=e.length;s!==r;++s){let o=e[s];o.id in t&&i.push(o)}return i}};function Cg(n,e,t){let i=n.createShader(e);return n.shaderSource(i,t),n.compileShader(i),i}var qM=37297,YM=0;function $M(n,e){let t=n.split(`
`),i=[],s=Math.max(e-6,0),r=Math.min(e+6,t.length);for(let o=s;o<r;o++){let a=o+1;i.push(`${a===e?">":" "} ${a}: ${t[o]}`)}return i.join(`
`)}var Pg=new Ue;function ZM(n){Ze._getMatrix(Pg,Ze.workingColorSpace,n);let e=`mat3( ${Pg.elements.map(t=>t.toFixed(4))} )`;switch(Ze.getTransfer(n)){case Ro:return[e,"LinearTransferOETF"];case st:return[e,"sRGBTransferOETF"];default:return Ce("WebGLProgram: Unsupported color space: ",n),[e,"LinearTransferOETF"]}}function Ig(n,e,t){let i=n.getShaderParameter(e,n.COMPILE_STATUS),r=(n.getShaderInfoLog(e)||"").trim();if(i&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return t.toUpperCase()+`

`+r+`

`+$M(n.getShaderSource(e),a)}else return r}function KM(n,e){let t=ZM(e);return[`vec4 ${n}( vec4 value ) {`,`	return ${t[1]}( vec4( ${t[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var JM={[nd]:"Linear",[id]:"Reinhard",[sd]:"Cineon",[rd]:"ACESFilmic",[ad]:"AgX",[ld]:"Neutral",[od]:"Custom"};function jM(n,e){let t=JM[e];return t===void 0?(Ce("WebGLProgram: Unsupported toneMapping:",e),"vec3 "+n+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+n+"( vec3 color ) { return "+t+"ToneMapping( color ); }"}var Vc=new A;function QM(){Ze.getLuminanceCoefficients(Vc);let n=Vc.x.toFixed(4),e=Vc.y.toFixed(4),t=Vc.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${n}, ${e}, ${t} );`,"	return dot( weights, rgb );","}"].join(`
`)}function ew(n){return[n.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",n.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(ua).join(`
`)}function tw(n){let e=[];for(let t in n){let i=n[t];i!==!1&&e.push("#define "+t+" "+i)}return e.join(`
`)}function nw(n,e){let t={},i=n.getProgramParameter(e,n.ACTIVE_ATTRIBUTES);for(let s=0;s<i;s++){let r=n.getActiveAttrib(e,s),o=r.name,a=1;r.type===n.FLOAT_MAT2&&(a=2),r.type===n.FLOAT_MAT3&&(a=3),r.type===n.FLOAT_MAT4&&(a=4),t[o]={type:r.type,location:n.getAttribLocation(e,o),locationSize:a}}return t}function ua(n){return n!==""}function Lg(n,e){let t=e.numSpotLightShadows+e.numSpotLightMaps-e.numSpotLightShadowsWithMaps;return n.replace(/NUM_SUN_LIGHTS/g,e.numSunLights).replace(/NUM_DIR_LIGHTS/g,e.numDirLights).replace(/NUM_SPOT_LIGHTS/g,e.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,e.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,t).replace(/NUM_RECT_AREA_LIGHTS/g,e.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,e.numPointLights).replace(/NUM_HEMI_LIGHTS/g,e.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,e.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,e.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,e.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,e.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,e.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,e.numLightProbeGrids)}function Dg(n,e){return n.replace(/NUM_CLIPPING_PLANES/g,e.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,e.numClippingPlanes-e.numClipIntersection)}var iw=/^[ \t]*#include +<([\w\d./]+)>/gm;function Ud(n){return n.replace(iw,sw)}function sw(n,e){let t=We[e];if(t===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+e+">");return Ud(t)}var rw=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function Ng(n){return n.replace(rw,ow)}function ow(n,e,t,i){let s="";for(let r=parseInt(e);r<parseInt(t);r++)s+=i.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function Ug(n){let e=`precision ${n.precision} float;
	precision ${n.precision} int;
	precision ${n.precision} sampler2D;
	precision ${n.precision} samplerCube;
	precision ${n.precision} sampler3D;
	precision ${n.precision} sampler2DArray;
	precision ${n.precision} sampler2DShadow;
	precision ${n.precision} samplerCubeShadow;
	precision ${n.precision} sampler2DArrayShadow;
	precision ${n.precision} isampler2D;
	precision ${n.precision} isampler3D;
	precision ${n.precision} isamplerCube;
	precision ${n.precision} isampler2DArray;
	precision ${n.precision} usampler2D;
	precision ${n.precision} usampler3D;
	precision ${n.precision} usamplerCube;
	precision ${n.precision} usampler2DArray;
	`;return n.precision==="highp"?e+=`
#define HIGH_PRECISION`:n.precision==="mediump"?e+=`
#define MEDIUM_PRECISION`:n.precision==="lowp"&&(e+=`
#define LOW_PRECISION`),e}var aw={[ea]:"SHADOWMAP_TYPE_PCF",[Lr]:"SHADOWMAP_TYPE_VSM"};function lw(n){return aw[n.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var cw={[Nr]:"ENVMAP_MODE_REFRACTION"};function hw(n){return n.envMap===!1?"ENVMAP_MODE_REFLECTION":cw[n.envMapMode]||"ENVMAP_MODE_REFLECTION"}var uw={[Ql]:"ENVMAP_BLENDING_MULTIPLY",[Jm]:"ENVMAP_BLENDING_MIX",[jm]:"ENVMAP_BLENDING_ADD"};function dw(n){return n.envMap===!1?"ENVMAP_BLENDING_NONE":uw[n.combine]||"ENVMAP_BLENDING_NONE"}function fw(n,e,t,i){let s=n.getContext(),r=t.defines,o=t.vertexShader,a=t.fragmentShader,l=lw(t),c=t.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=hw(t),f=dw(t),d=ew(t),u=tw(r),m=s.createProgram(),y,p,g=t.glslVersion?"#version "+t.glslVersion+`
`:"";t.isRawShaderMaterial?(y=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,u].filter(ua).join(`
`),y.length>0&&(y+=`
`),p=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,u].filter(ua).join(`
`),p.length>0&&(p+=`
`)):(y=[Ug(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,u,t.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",t.batching?"#define USE_BATCHING":"",t.batchingColor?"#define USE_BATCHING_COLOR":"",t.instancing?"#define USE_INSTANCING":"",t.instancingColor?"#define USE_INSTANCING_COLOR":"",t.instancingMorph?"#define USE_INSTANCING_MORPH":"",t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.map?"#define USE_MAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+h:"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.displacementMap?"#define USE_DISPLACEMENTMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.mapUv?"#define MAP_UV "+t.mapUv:"",t.alphaMapUv?"#define ALPHAMAP_UV "+t.alphaMapUv:"",t.lightMapUv?"#define LIGHTMAP_UV "+t.lightMapUv:"",t.aoMapUv?"#define AOMAP_UV "+t.aoMapUv:"",t.emissiveMapUv?"#define EMISSIVEMAP_UV "+t.emissiveMapUv:"",t.bumpMapUv?"#define BUMPMAP_UV "+t.bumpMapUv:"",t.normalMapUv?"#define NORMALMAP_UV "+t.normalMapUv:"",t.displacementMapUv?"#define DISPLACEMENTMAP_UV "+t.displacementMapUv:"",t.metalnessMapUv?"#define METALNESSMAP_UV "+t.metalnessMapUv:"",t.roughnessMapUv?"#define ROUGHNESSMAP_UV "+t.roughnessMapUv:"",t.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+t.anisotropyMapUv:"",t.clearcoatMapUv?"#define CLEARCOATMAP_UV "+t.clearcoatMapUv:"",t.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+t.clearcoatNormalMapUv:"",t.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+t.clearcoatRoughnessMapUv:"",t.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+t.diffuseRoughnessMapUv:"",t.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+t.iridescenceMapUv:"",t.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+t.iridescenceThicknessMapUv:"",t.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+t.sheenColorMapUv:"",t.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+t.sheenRoughnessMapUv:"",t.specularMapUv?"#define SPECULARMAP_UV "+t.specularMapUv:"",t.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+t.specularColorMapUv:"",t.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+t.specularIntensityMapUv:"",t.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+t.transmissionMapUv:"",t.thicknessMapUv?"#define THICKNESSMAP_UV "+t.thicknessMapUv:"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexNormals?"#define HAS_NORMAL":"",t.vertexColors?"#define USE_COLOR":"",t.vertexAlphas?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.flatShading?"#define FLAT_SHADED":"",t.skinning?"#define USE_SKINNING":"",t.morphTargets?"#define USE_MORPHTARGETS":"",t.morphNormals&&t.flatShading===!1?"#define USE_MORPHNORMALS":"",t.morphColors?"#define USE_MORPHCOLORS":"",t.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+t.morphTextureStride:"",t.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+t.morphTargetsCount:"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+l:"",t.sizeAttenuation?"#define USE_SIZEATTENUATION":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(ua).join(`
`),p=[Ug(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,u,t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",t.map?"#define USE_MAP":"",t.matcap?"#define USE_MATCAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+c:"",t.envMap?"#define "+h:"",t.envMap?"#define "+f:"",t.envMapPMREM?"#define ENVMAP_MAX_LOD "+t.envMapMaxLod+".0":"",t.envMapPMREM?"#define ENVMAP_SIZE "+t.envMapSize+".0":"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoat?"#define USE_CLEARCOAT":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.dispersion?"#define USE_DISPERSION":"",t.retroreflection?"#define USE_RETROREFLECTION":"",t.iridescence?"#define USE_IRIDESCENCE":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaTest?"#define USE_ALPHATEST":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.sheen?"#define USE_SHEEN":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexColors||t.instancingColor?"#define USE_COLOR":"",t.vertexAlphas||t.batchingColor?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.gradientMap?"#define USE_GRADIENTMAP":"",t.flatShading?"#define FLAT_SHADED":"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+l:"",t.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",t.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",t.toneMapping!==di?"#define TONE_MAPPING":"",t.toneMapping!==di?We.tonemapping_pars_fragment:"",t.toneMapping!==di?jM("toneMapping",t.toneMapping):"",t.dithering?"#define DITHERING":"",t.opaque?"#define OPAQUE":"",We.colorspace_pars_fragment,KM("linearToOutputTexel",t.outputColorSpace),QM(),t.useDepthPacking?"#define DEPTH_PACKING "+t.depthPacking:"",`
`].filter(ua).join(`
`)),o=Ud(o),o=Lg(o,t),o=Dg(o,t),a=Ud(a),a=Lg(a,t),a=Dg(a,t),o=Ng(o),a=Ng(a),t.isRawShaderMaterial!==!0&&(g=`#version 300 es
`,y=[d,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+y,p=["#define varying in",t.glslVersion===Sd?"":"layout(location = 0) out highp vec4 pc_fragColor;",t.glslVersion===Sd?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+p);let M=g+y+o,w=g+p+a,b=Cg(s,s.VERTEX_SHADER,M),C=Cg(s,s.FRAGMENT_SHADER,w);s.attachShader(m,b),s.attachShader(m,C),t.index0AttributeName!==void 0?s.bindAttribLocation(m,0,t.index0AttributeName):t.hasPositionAttribute===!0&&s.bindAttribLocation(m,0,"position"),s.linkProgram(m);function R(D){if(n.debug.checkShaderErrors){let U=s.getProgramInfoLog(m)||"",z=s.getShaderInfoLog(b)||"",H=s.getShaderInfoLog(C)||"",L=U.trim(),q=z.trim(),J=H.trim(),G=!0,ne=!0;if(s.getProgramParameter(m,s.LINK_STATUS)===!1)if(G=!1,typeof n.debug.onShaderError=="function")n.debug.onShaderError(s,m,b,C);else{let X=Ig(s,b,"vertex"),Q=Ig(s,C,"fragment");De("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(m,s.VALIDATE_STATUS)+`

Material Name: `+D.name+`
Material Type: `+D.type+`

Program Info Log: `+L+`
`+X+`
`+Q)}else L!==""?Ce("WebGLProgram: Program Info Log:",L):(q===""||J==="")&&(ne=!1);ne&&(D.diagnostics={runnable:G,programLog:L,vertexShader:{log:q,prefix:y},fragmentShader:{log:J,prefix:p}})}s.deleteShader(b),s.deleteShader(C),_=new Or(s,m),E=nw(s,m)}let _;this.getUniforms=function(){return _===void 0&&R(this),_};let E;this.getAttributes=function(){return E===void 0&&R(this),E};let k=t.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return k===!1&&(k=s.getProgramParameter(m,qM)),k},this.destroy=function(){i.releaseStatesOfProgram(this),s.deleteProgram(m),this.program=void 0},this.type=t.shaderType,this.name=t.shaderName,this.id=YM++,this.cacheKey=e,this.usedTimes=1,this.program=m,this.vertexShader=b,this.fragmentShader=C,this}var pw=0,Od=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(e,t,i){let s=this._getShaderCacheForMaterial(e);return s.has(t)===!1&&(s.add(t),t.usedTimes++),s.has(i)===!1&&(s.add(i),i.usedTimes++),this}remove(e){let t=this.materialCache.get(e);for(let i of t)i.usedTimes--,i.usedTimes===0&&this.shaderCache.delete(i.code);return this.materialCache.delete(e),this}getVertexShaderStage(e){return this._getShaderStage(e.vertexShader)}getFragmentShaderStage(e){return this._getShaderStage(e.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(e){let t=this.materialCache,i=t.get(e);return i===void 0&&(i=new Set,t.set(e,i)),i}_getShaderStage(e){let t=this.shaderCache,i=t.get(e);return i===void 0&&(i=new Fd(e),t.set(e,i)),i}},Fd=class{constructor(e){this.id=pw++,this.code=e,this.usedTimes=0}};function mw(n){return n===cs||n===oa||n===aa}function gw(n,e,t,i,s,r){let o=new wr,a=new Od,l=new Set,c=[],h=new Map,f=i.logarithmicDepthBuffer,d={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function u(_){return l.add(_),_===0?"uv":`uv${_}`}function m(_,E,k,D,U,z){let H=D.fog,L=U.geometry,q=_.isMeshStandardMaterial||_.isMeshLambertMaterial||_.isMeshPhongMaterial?D.environment:null,J=_.isMeshStandardMaterial||_.isMeshLambertMaterial&&!_.envMap||_.isMeshPhongMaterial&&!_.envMap,G=e.get(_.envMap||q,J),ne=d[_.type],X=i.precision;_.precision!==null&&(X=i.getMaxPrecision(_.precision),X!==_.precision&&Ce("WebGLProgram.getParameters:",_.precision,"not supported, using",X,"instead."));let Q=L.morphAttributes.position||L.morphAttributes.normal||L.morphAttributes.color,ee=Q!==void 0?Q.length:0,Me=0;L.morphAttributes.position!==void 0&&(Me=1),L.morphAttributes.normal!==void 0&&(Me=2),L.morphAttributes.color!==void 0&&(Me=3);let Fe,Z,me,ye;if(ne){let pe=fn[ne];Fe=pe.vertexShader,Z=pe.fragmentShader}else{Fe=_.vertexShader,Z=_.fragmentShader;let pe=a.getVertexShaderStage(_),ot=a.getFragmentShaderStage(_);a.update(_,pe,ot),me=pe.id,ye=ot.id}let Pe=n.getRenderTarget(),ge=n.state.buffers.depth.getReversed(),ze=U.isInstancedMesh===!0,St=U.isBatchedMesh===!0,Le=!!_.map,rt=!!_.matcap,at=!!G,qe=at&&G.isPMREMTexture===!0,Vt=!!_.aoMap,Tt=!!_.lightMap,pn=!!_.bumpMap&&_.wireframe===!1,pt=!!_.normalMap,si=!!_.displacementMap,Nt=!!_.emissiveMap,Dn=!!_.metalnessMap,Nn=!!_.roughnessMap,Un=_.anisotropy>0,N=_.clearcoat>0,On=_.diffuseRoughness>0,ut=_.dispersion>0,dt=_.retroreflectivity>0,fe=_.iridescence>0,At=_.sheen>0,Ie=_.transmission>0,Oe=Un&&!!_.anisotropyMap,T=N&&!!_.clearcoatMap,x=N&&!!_.clearcoatNormalMap,F=N&&!!_.clearcoatRoughnessMap,te=On&&!!_.diffuseRoughnessMap,j=fe&&!!_.iridescenceMap,re=fe&&!!_.iridescenceThicknessMap,he=At&&!!_.sheenColorMap,Y=At&&!!_.sheenRoughnessMap,$=!!_.specularMap,ae=!!_.specularColorMap,P=!!_.specularIntensityMap,K=Ie&&!!_.transmissionMap,W=Ie&&!!_.thicknessMap,le=!!_.gradientMap,se=!!_.alphaMap,oe=_.alphaTest>0,Te=!!_.alphaHash,He=!!_.extensions,ie=di;_.toneMapped&&(Pe===null||Pe.isXRRenderTarget===!0)&&(ie=n.toneMapping);let Ae=qe?G.isCompressedCubeTexture?G.image[0].mipmaps:G.mipmaps:null,Ve={shaderID:ne,shaderType:_.type,shaderName:_.name,vertexShader:Fe,fragmentShader:Z,defines:_.defines,customVertexShaderID:me,customFragmentShaderID:ye,isRawShaderMaterial:_.isRawShaderMaterial===!0,glslVersion:_.glslVersion,precision:X,batching:St,batchingColor:St&&U._colorsTexture!==null,instancing:ze,instancingColor:ze&&U.instanceColor!==null,instancingMorph:ze&&U.morphTexture!==null,outputColorSpace:Pe===null?n.outputColorSpace:Pe.isXRRenderTarget===!0?Pe.texture.colorSpace:Ze.workingColorSpace,alphaToCoverage:!!_.alphaToCoverage,map:Le,matcap:rt,envMap:at,envMapMode:at&&G.mapping,envMapPMREM:qe,envMapMaxLod:qe?Ae.length-1:null,envMapSize:qe?Ae[0].width:null,aoMap:Vt,lightMap:Tt,bumpMap:pn,normalMap:pt,displacementMap:si,emissiveMap:Nt,normalMapObjectSpace:pt&&_.normalMapType===tg,normalMapTangentSpace:pt&&_.normalMapType===la,packedNormalMap:pt&&_.normalMapType===la&&mw(_.normalMap.format),metalnessMap:Dn,roughnessMap:Nn,anisotropy:Un,anisotropyMap:Oe,clearcoat:N,clearcoatMap:T,clearcoatNormalMap:x,clearcoatRoughnessMap:F,diffuseRoughness:On,diffuseRoughnessMap:te,dispersion:ut,retroreflection:dt,iridescence:fe,iridescenceMap:j,iridescenceThicknessMap:re,sheen:At,sheenColorMap:he,sheenRoughnessMap:Y,specularMap:$,specularColorMap:ae,specularIntensityMap:P,transmission:Ie,transmissionMap:K,thicknessMap:W,gradientMap:le,opaque:_.transparent===!1&&_.blending===Dr&&_.alphaToCoverage===!1,alphaMap:se,alphaTest:oe,alphaHash:Te,combine:_.combine,mapUv:Le&&u(_.map.channel),aoMapUv:Vt&&u(_.aoMap.channel),lightMapUv:Tt&&u(_.lightMap.channel),bumpMapUv:pn&&u(_.bumpMap.channel),normalMapUv:pt&&u(_.normalMap.channel),displacementMapUv:si&&u(_.displacementMap.channel),emissiveMapUv:Nt&&u(_.emissiveMap.channel),metalnessMapUv:Dn&&u(_.metalnessMap.channel),roughnessMapUv:Nn&&u(_.roughnessMap.channel),anisotropyMapUv:Oe&&u(_.anisotropyMap.channel),clearcoatMapUv:T&&u(_.clearcoatMap.channel),clearcoatNormalMapUv:x&&u(_.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:F&&u(_.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:te&&u(_.diffuseRoughnessMap.channel),iridescenceMapUv:j&&u(_.iridescenceMap.channel),iridescenceThicknessMapUv:re&&u(_.iridescenceThicknessMap.channel),sheenColorMapUv:he&&u(_.sheenColorMap.channel),sheenRoughnessMapUv:Y&&u(_.sheenRoughnessMap.channel),specularMapUv:$&&u(_.specularMap.channel),specularColorMapUv:ae&&u(_.specularColorMap.channel),specularIntensityMapUv:P&&u(_.specularIntensityMap.channel),transmissionMapUv:K&&u(_.transmissionMap.channel),thicknessMapUv:W&&u(_.thicknessMap.channel),alphaMapUv:se&&u(_.alphaMap.channel),vertexTangents:!!L.attributes.tangent&&(pt||Un),vertexNormals:!!L.attributes.normal,vertexColors:_.vertexColors,vertexAlphas:_.vertexColors===!0&&!!L.attributes.color&&L.attributes.color.itemSize===4,pointsUvs:U.isPoints===!0&&!!L.attributes.uv&&(Le||se),fog:!!H,useFog:_.fog===!0,fogExp2:!!H&&H.isFogExp2,flatShading:_.wireframe===!1&&(_.flatShading===!0||L.attributes.normal===void 0&&pt===!1&&(_.isMeshLambertMaterial||_.isMeshPhongMaterial||_.isMeshStandardMaterial||_.isMeshPhysicalMaterial)),sizeAttenuation:_.sizeAttenuation===!0,logarithmicDepthBuffer:f,reversedDepthBuffer:ge,skinning:U.isSkinnedMesh===!0,hasPositionAttribute:L.attributes.position!==void 0,morphTargets:L.morphAttributes.position!==void 0,morphNormals:L.morphAttributes.normal!==void 0,morphColors:L.morphAttributes.color!==void 0,morphTargetsCount:ee,morphTextureStride:Me,numSunLights:E.sun.length,numDirLights:E.directional.length,numPointLights:E.point.length,numSpotLights:E.spot.length,numSpotLightMaps:E.spotLightMap.length,numRectAreaLights:E.rectArea.length,numHemiLights:E.hemi.length,numSunLightShadows:E.sunShadowMap.length,numDirLightShadows:E.directionalShadowMap.length,numPointLightShadows:E.pointShadowMap.length,numSpotLightShadows:E.spotShadowMap.length,numSpotLightShadowsWithMaps:E.numSpotLightShadowsWithMaps,numLightProbes:E.numLightProbes,numLightProbeGrids:z.filter(pe=>pe.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:_.dithering,shadowMapEnabled:n.shadowMap.enabled&&k.length>0,shadowMapType:n.shadowMap.type,toneMapping:ie,decodeVideoTexture:Le&&_.map.isVideoTexture===!0&&Ze.getTransfer(_.map.colorSpace)===st,decodeVideoTextureEmissive:Nt&&_.emissiveMap.isVideoTexture===!0&&Ze.getTransfer(_.emissiveMap.colorSpace)===st,premultipliedAlpha:_.premultipliedAlpha,doubleSided:_.side===zn,flipSided:_.side===dn,useDepthPacking:_.depthPacking>=0,depthPacking:_.depthPacking||0,index0AttributeName:_.index0AttributeName,extensionClipCullDistance:He&&_.extensions.clipCullDistance===!0&&t.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(He&&_.extensions.multiDraw===!0||St)&&t.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:t.has("KHR_parallel_shader_compile"),customProgramCacheKey:_.customProgramCacheKey()};return Ve.vertexUv1s=l.has(1),Ve.vertexUv2s=l.has(2),Ve.vertexUv3s=l.has(3),l.clear(),Ve}function y(_){let E=[];if(_.shaderID?E.push(_.shaderID):(E.push(_.customVertexShaderID),E.push(_.customFragmentShaderID)),_.defines!==void 0)for(let k in _.defines)E.push(k),E.push(_.defines[k]);return _.isRawShaderMaterial===!1&&(p(E,_),g(E,_),E.push(n.outputColorSpace)),E.push(_.customProgramCacheKey),E.join()}function p(_,E){_.push(E.precision),_.push(E.outputColorSpace),_.push(E.envMapMode),_.push(E.envMapPMREM),_.push(E.envMapMaxLod),_.push(E.envMapSize),_.push(E.mapUv),_.push(E.alphaMapUv),_.push(E.lightMapUv),_.push(E.aoMapUv),_.push(E.bumpMapUv),_.push(E.normalMapUv),_.push(E.displacementMapUv),_.push(E.emissiveMapUv),_.push(E.metalnessMapUv),_.push(E.roughnessMapUv),_.push(E.anisotropyMapUv),_.push(E.clearcoatMapUv),_.push(E.clearcoatNormalMapUv),_.push(E.clearcoatRoughnessMapUv),_.push(E.diffuseRoughnessMapUv),_.push(E.iridescenceMapUv),_.push(E.iridescenceThicknessMapUv),_.push(E.sheenColorMapUv),_.push(E.sheenRoughnessMapUv),_.push(E.specularMapUv),_.push(E.specularColorMapUv),_.push(E.specularIntensityMapUv),_.push(E.transmissionMapUv),_.push(E.thicknessMapUv),_.push(E.combine),_.push(E.fogExp2),_.push(E.sizeAttenuation),_.push(E.morphTargetsCount),_.push(E.numSunLights),_.push(E.numDirLights),_.push(E.numPointLights),_.push(E.numSpotLights),_.push(E.numSpotLightMaps),_.push(E.numHemiLights),_.push(E.numRectAreaLights),_.push(E.numSunLightShadows),_.push(E.numDirLightShadows),_.push(E.numPointLightShadows),_.push(E.numSpotLightShadows),_.push(E.numSpotLightShadowsWithMaps),_.push(E.numLightProbes),_.push(E.numLightProbeGrids),_.push(E.shadowMapType),_.push(E.toneMapping),_.push(E.numClippingPlanes),_.push(E.numClipIntersection),_.push(E.depthPacking)}function g(_,E){o.disableAll(),E.instancing&&o.enable(0),E.instancingColor&&o.enable(1),E.instancingMorph&&o.enable(2),E.matcap&&o.enable(3),E.envMap&&o.enable(4),E.normalMapObjectSpace&&o.enable(5),E.normalMapTangentSpace&&o.enable(6),E.clearcoat&&o.enable(7),E.iridescence&&o.enable(8),E.alphaTest&&o.enable(9),E.vertexColors&&o.enable(10),E.vertexAlphas&&o.enable(11),E.vertexUv1s&&o.enable(12),E.vertexUv2s&&o.enable(13),E.vertexUv3s&&o.enable(14),E.vertexTangents&&o.enable(15),E.anisotropy&&o.enable(16),E.alphaHash&&o.enable(17),E.batching&&o.enable(18),E.dispersion&&o.enable(19),E.retroreflection&&o.enable(24),E.diffuseRoughness&&o.enable(25),E.batchingColor&&o.enable(20),E.gradientMap&&o.enable(21),E.packedNormalMap&&o.enable(22),E.vertexNormals&&o.enable(23),_.push(o.mask),o.disableAll(),E.fog&&o.enable(0),E.useFog&&o.enable(1),E.flatShading&&o.enable(2),E.logarithmicDepthBuffer&&o.enable(3),E.reversedDepthBuffer&&o.enable(4),E.skinning&&o.enable(5),E.morphTargets&&o.enable(6),E.morphNormals&&o.enable(7),E.morphColors&&o.enable(8),E.premultipliedAlpha&&o.enable(9),E.shadowMapEnabled&&o.enable(10),E.doubleSided&&o.enable(11),E.flipSided&&o.enable(12),E.useDepthPacking&&o.enable(13),E.dithering&&o.enable(14),E.transmission&&o.enable(15),E.sheen&&o.enable(16),E.opaque&&o.enable(17),E.pointsUvs&&o.enable(18),E.decodeVideoTexture&&o.enable(19),E.decodeVideoTextureEmissive&&o.enable(20),E.alphaToCoverage&&o.enable(21),E.numLightProbeGrids>0&&o.enable(22),E.hasPositionAttribute&&o.enable(23),_.push(o.mask)}function M(_){let E=d[_.type],k;if(E){let D=fn[E];k=ca.clone(D.uniforms)}else k=_.uniforms;return k}function w(_,E){let k=h.get(E);return k!==void 0?++k.usedTimes:(k=new fw(n,E,_,s),c.push(k),h.set(E,k)),k}function b(_){if(--_.usedTimes===0){let E=c.indexOf(_);c[E]=c[c.length-1],c.pop(),h.delete(_.cacheKey),_.destroy()}}function C(_){a.remove(_)}function R(){a.dispose()}return{getParameters:m,getProgramCacheKey:y,getUniforms:M,acquireProgram:w,releaseProgram:b,releaseShaderCache:C,programs:c,dispose:R}}function _w(){let n=new WeakMap;function e(o){return n.has(o)}function t(o){let a=n.get(o);return a===void 0&&(a={},n.set(o,a)),a}function i(o){n.delete(o)}function s(o,a,l){n.get(o)[a]=l}function r(){n=new WeakMap}return{has:e,get:t,remove:i,update:s,dispose:r}}function vw(n,e){return n.groupOrder!==e.groupOrder?n.groupOrder-e.groupOrder:n.renderOrder!==e.renderOrder?n.renderOrder-e.renderOrder:n.material.id!==e.material.id?n.material.id-e.material.id:n.materialVariant!==e.materialVariant?n.materialVariant-e.materialVariant:n.z!==e.z?n.z-e.z:n.id-e.id}function Og(n,e){return n.groupOrder!==e.groupOrder?n.groupOrder-e.groupOrder:n.renderOrder!==e.renderOrder?n.renderOrder-e.renderOrder:n.z!==e.z?e.z-n.z:n.id-e.id}function Fg(){let n=[],e=0,t=[],i=[],s=[];function r(){e=0,t.length=0,i.length=0,s.length=0}function o(d){let u=0;return d.isInstancedMesh&&(u+=2),d.isSkinnedMesh&&(u+=1),u}function a(d,u,m,y,p,g){let M=n[e];return M===void 0?(M={id:d.id,object:d,geometry:u,material:m,materialVariant:o(d),groupOrder:y,renderOrder:d.renderOrder,z:p,group:g},n[e]=M):(M.id=d.id,M.object=d,M.geometry=u,M.material=m,M.materialVariant=o(d),M.groupOrder=y,M.renderOrder=d.renderOrder,M.z=p,M.group=g),e++,M}function l(d,u,m,y,p,g,M){M.reversedDepth===!0&&(p=-p);let w=a(d,u,m,y,p,g);m.transmission>0?i.push(w):m.transparent===!0?s.push(w):t.push(w)}function c(d,u,m,y,p,g){let M=a(d,u,m,y,p,g);m.transmission>0?i.unshift(M):m.transparent===!0?s.unshift(M):t.unshift(M)}function h(d,u){t.length>1&&t.sort(d||vw),i.length>1&&i.sort(u||Og),s.length>1&&s.sort(u||Og)}function f(){for(let d=e,u=n.length;d<u;d++){let m=n[d];if(m.id===null)break;m.id=null,m.object=null,m.geometry=null,m.material=null,m.group=null}}return{opaque:t,transmissive:i,transparent:s,init:r,push:l,unshift:c,finish:f,sort:h}}function yw(){let n=new WeakMap;function e(i,s){let r=n.get(i),o;return r===void 0?(o=new Fg,n.set(i,[o])):s>=r.length?(o=new Fg,r.push(o)):o=r[s],o}function t(){n=new WeakMap}return{get:e,dispose:t}}function xw(){let n={};return{get:function(e){if(n[e.id]!==void 0)return n[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={direction:new A,color:new Re};break;case"SpotLight":t={position:new A,direction:new A,color:new Re,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":t={position:new A,color:new Re,distance:0,decay:0};break;case"HemisphereLight":t={direction:new A,skyColor:new Re,groundColor:new Re};break;case"RectAreaLight":t={color:new Re,position:new A,halfWidth:new A,halfHeight:new A};break}return n[e.id]=t,t}}}function Sw(){let n={};return{get:function(e){if(n[e.id]!==void 0)return n[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Ee};break;case"SpotLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Ee};break;case"PointLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Ee,shadowCameraNear:1,shadowCameraFar:1e3};break}return n[e.id]=t,t}}}var bw=0;function Mw(n,e){return(e.castShadow?2:0)-(n.castShadow?2:0)+(e.map?1:0)-(n.map?1:0)}function ww(n){let e=new xw,t=Sw(),i={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)i.probe.push(new A);let s=new A,r=new Ke,o=new Ke;function a(c){let h=0,f=0,d=0;for(let z=0;z<9;z++)i.probe[z].set(0,0,0);let u=0,m=0,y=0,p=0,g=0,M=0,w=0,b=0,C=0,R=0,_=0,E=0,k=0,D=0;c.sort(Mw);for(let z=0,H=c.length;z<H;z++){let L=c[z],q=L.color,J=L.intensity,G=L.distance,ne=null;if(L.shadow&&L.shadow.map&&(L.shadow.map.texture.format===cs?ne=L.shadow.map.texture:ne=L.shadow.map.depthTexture||L.shadow.map.texture),L.isAmbientLight)h+=q.r*J,f+=q.g*J,d+=q.b*J;else if(L.isLightProbe){for(let X=0;X<9;X++)i.probe[X].addScaledVector(L.sh.coefficients[X],J);D++}else if(L.isSunLight){let X=e.get(L);if(X.color.copy(L.color).multiplyScalar(L.intensity),L.castShadow){let Q=L.shadow,ee=t.get(L);ee.shadowIntensity=Q.intensity,ee.shadowBias=Q.bias,ee.shadowNormalBias=Q.normalBias,ee.shadowRadius=Q.radius,ee.shadowMapSize.copy(Q.mapSize).multiply(Q.getFrameExtents()),i.sunShadow[m]=ee,i.sunShadowMap[m]=ne;let Me=Q.getViewportCount();for(let Fe=0;Fe<Me;Fe++)i.sunShadowMatrix[y+Fe]=Q.getMatrix(Fe),i.sunShadowCascade[y+Fe]=Q._cascadeData[Fe];y+=Me,m++}i.sun[u]=X,u++}else if(L.isDirectionalLight){let X=e.get(L);if(X.color.copy(L.color).multiplyScalar(L.intensity),L.castShadow){let Q=L.shadow,ee=t.get(L);ee.shadowIntensity=Q.intensity,ee.shadowBias=Q.bias,ee.shadowNormalBias=Q.normalBias,ee.shadowRadius=Q.radius,ee.shadowMapSize=Q.mapSize,i.directionalShadow[p]=ee,i.directionalShadowMap[p]=ne,i.directionalShadowMatrix[p]=L.shadow.matrix,C++}i.directional[p]=X,p++}else if(L.isSpotLight){let X=e.get(L);X.position.setFromMatrixPosition(L.matrixWorld),X.color.copy(q).multiplyScalar(J),X.distance=G,X.coneCos=Math.cos(L.angle),X.penumbraCos=Math.cos(L.angle*(1-L.penumbra)),X.decay=L.decay,i.spot[M]=X;let Q=L.shadow;if(L.map&&(i.spotLightMap[E]=L.map,E++,Q.updateMatrices(L),L.castShadow&&k++),i.spotLightMatrix[M]=Q.matrix,L.castShadow){let ee=t.get(L);ee.shadowIntensity=Q.intensity,ee.shadowBias=Q.bias,ee.shadowNormalBias=Q.normalBias,ee.shadowRadius=Q.radius,ee.shadowMapSize=Q.mapSize,i.spotShadow[M]=ee,i.spotShadowMap[M]=ne,_++}M++}else if(L.isRectAreaLight){let X=e.get(L);X.color.copy(q).multiplyScalar(J),X.halfWidth.set(L.width*.5,0,0),X.halfHeight.set(0,L.height*.5,0),i.rectArea[w]=X,w++}else if(L.isPointLight){let X=e.get(L);if(X.color.copy(L.color).multiplyScalar(L.intensity),X.distance=L.distance,X.decay=L.decay,L.castShadow){let Q=L.shadow,ee=t.get(L);ee.shadowIntensity=Q.intensity,ee.shadowBias=Q.bias,ee.shadowNormalBias=Q.normalBias,ee.shadowRadius=Q.radius,ee.shadowMapSize=Q.mapSize,ee.shadowCameraNear=Q.camera.near,ee.shadowCameraFar=Q.camera.far,i.pointShadow[g]=ee,i.pointShadowMap[g]=ne,i.pointShadowMatrix[g]=L.shadow.matrix,R++}i.point[g]=X,g++}else if(L.isHemisphereLight){let X=e.get(L);X.skyColor.copy(L.color).multiplyScalar(J),X.groundColor.copy(L.groundColor).multiplyScalar(J),i.hemi[b]=X,b++}}w>0&&(n.has("OES_texture_float_linear")===!0?(i.rectAreaLTC1=de.LTC_FLOAT_1,i.rectAreaLTC2=de.LTC_FLOAT_2):(i.rectAreaLTC1=de.LTC_HALF_1,i.rectAreaLTC2=de.LTC_HALF_2)),i.ambient[0]=h,i.ambient[1]=f,i.ambient[2]=d;let U=i.hash;(U.sunLength!==u||U.directionalLength!==p||U.pointLength!==g||U.spotLength!==M||U.rectAreaLength!==w||U.hemiLength!==b||U.numSunShadows!==m||U.numDirectionalShadows!==C||U.numPointShadows!==R||U.numSpotShadows!==_||U.numSpotMaps!==E||U.numLightProbes!==D)&&(i.sun.length=u,i.directional.length=p,i.spot.length=M,i.rectArea.length=w,i.point.length=g,i.hemi.length=b,i.sunShadow.length=m,i.sunShadowMap.length=m,i.sunShadowMatrix.length=y,i.sunShadowCascade.length=y,i.directionalShadow.length=C,i.directionalShadowMap.length=C,i.directionalShadowMatrix.length=C,i.pointShadow.length=R,i.pointShadowMap.length=R,i.pointShadowMatrix.length=R,i.spotShadow.length=_,i.spotShadowMap.length=_,i.spotLightMatrix.length=_+E-k,i.spotLightMap.length=E,i.numSpotLightShadowsWithMaps=k,i.numLightProbes=D,U.sunLength=u,U.directionalLength=p,U.pointLength=g,U.spotLength=M,U.rectAreaLength=w,U.hemiLength=b,U.numSunShadows=m,U.numDirectionalShadows=C,U.numPointShadows=R,U.numSpotShadows=_,U.numSpotMaps=E,U.numLightProbes=D,i.version=bw++)}function l(c,h){let f=0,d=0,u=0,m=0,y=0,p=0,g=h.matrixWorldInverse;for(let M=0,w=c.length;M<w;M++){let b=c[M];if(b.isSunLight){let C=i.sun[f];C.direction.setFromMatrixPosition(b.matrixWorld),C.direction.transformDirection(g),f++}else if(b.isDirectionalLight){let C=i.directional[d];C.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),C.direction.sub(s),C.direction.transformDirection(g),d++}else if(b.isSpotLight){let C=i.spot[m];C.position.setFromMatrixPosition(b.matrixWorld),C.position.applyMatrix4(g),C.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),C.direction.sub(s),C.direction.transformDirection(g),m++}else if(b.isRectAreaLight){let C=i.rectArea[y];C.position.setFromMatrixPosition(b.matrixWorld),C.position.applyMatrix4(g),o.identity(),r.copy(b.matrixWorld),r.premultiply(g),o.extractRotation(r),C.halfWidth.set(b.width*.5,0,0),C.halfHeight.set(0,b.height*.5,0),C.halfWidth.applyMatrix4(o),C.halfHeight.applyMatrix4(o),y++}else if(b.isPointLight){let C=i.point[u];C.position.setFromMatrixPosition(b.matrixWorld),C.position.applyMatrix4(g),u++}else if(b.isHemisphereLight){let C=i.hemi[p];C.direction.setFromMatrixPosition(b.matrixWorld),C.direction.transformDirection(g),p++}}}return{setup:a,setupView:l,state:i}}function Bg(n){let e=new ww(n),t=[],i=[],s=[];function r(f){h.camera=f,t.length=0,i.length=0,s.length=0}function o(f){f.isLightProbeGrid?s.push(f):t.push(f)}function a(f){i.push(f)}function l(){e.setup(t),s.sort((f,d)=>f.priority-d.priority||f.id-d.id)}function c(f){e.setupView(t,f)}let h={lightsArray:t,shadowsArray:i,lightProbeGridArray:s,camera:null,lights:e,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function Ew(n){let e=new WeakMap;function t(s,r=0){let o=e.get(s),a;return o===void 0?(a=new Bg(n),e.set(s,[a])):r>=o.length?(a=new Bg(n),o.push(a)):a=o[r],a}function i(){e=new WeakMap}return{get:t,dispose:i}}var Tw=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,Aw=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,Rw=[new A(1,0,0),new A(-1,0,0),new A(0,1,0),new A(0,-1,0),new A(0,0,1),new A(0,0,-1)],Cw=[new A(0,-1,0),new A(0,-1,0),new A(0,0,1),new A(0,0,-1),new A(0,-1,0),new A(0,-1,0)],kg=new Ke,ha=new A,Id=new A;function Pw(n,e,t){let i=new ts,s=new Ee,r=new Ee,o=new tt,a=new kl,l=new zl,c={},h=t.maxTextureSize,f={[ls]:dn,[dn]:ls,[zn]:zn},d=new vn({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new Ee},radius:{value:4}},vertexShader:Tw,fragmentShader:Aw}),u=d.clone();u.defines.HORIZONTAL_PASS=1;let m=new Pt;m.setAttribute("position",new Bt(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let y=new yt(m,d),p=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=ea;let g=this.type;this.render=function(R,_,E){if(p.enabled===!1||p.autoUpdate===!1&&p.needsUpdate===!1||R.length===0)return;this.type===Lm&&(Ce("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=ea);let k=n.getRenderTarget(),D=n.getActiveCubeFace(),U=n.getActiveMipmapLevel(),z=n.state;z.setBlending(Us),z.buffers.depth.getReversed()===!0?z.buffers.color.setClear(0,0,0,0):z.buffers.color.setClear(1,1,1,1),z.buffers.depth.setTest(!0),z.setScissorTest(!1);let H=g!==this.type;H&&_.traverse(function(L){L.material&&(Array.isArray(L.material)?L.material.forEach(q=>q.needsUpdate=!0):L.material.needsUpdate=!0)});for(let L=0,q=R.length;L<q;L++){let J=R[L],G=J.shadow;if(G===void 0){Ce("WebGLShadowMap:",J,"has no shadow.");continue}if(G.autoUpdate===!1&&G.needsUpdate===!1)continue;s.copy(G.mapSize);let ne=G.getFrameExtents();s.multiply(ne),r.copy(G.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/ne.x),s.x=r.x*ne.x,G.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/ne.y),s.y=r.y*ne.y,G.mapSize.y=r.y));let X=n.state.buffers.depth.getReversed();if(G.camera._reversedDepth=X,G.map===null||H===!0){if(G.map!==null&&(G.map.depthTexture!==null&&(G.map.depthTexture.dispose(),G.map.depthTexture=null),G.map.dispose()),this.type===Lr){if(J.isPointLight){Ce("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}G.map=new un(s.x,s.y,{format:cs,type:ti,minFilter:hn,magFilter:hn,generateMipmaps:!1}),G.map.texture.name=J.name+".shadowMap",G.map.depthTexture=new Di(s.x,s.y,ei),G.map.depthTexture.name=J.name+".shadowMapDepth",G.map.depthTexture.format=Ii,G.map.depthTexture.compareFunction=null,G.map.depthTexture.minFilter=zt,G.map.depthTexture.magFilter=zt}else J.isPointLight?(G.map=new da(s.x),G.map.depthTexture=new Fo(s.x,Qn)):(G.map=new un(s.x,s.y),G.map.depthTexture=new Di(s.x,s.y,Qn)),G.map.depthTexture.name=J.name+".shadowMap",G.map.depthTexture.format=Ii,this.type===ea?(G.map.depthTexture.compareFunction=X?vd:_d,G.map.depthTexture.minFilter=hn,G.map.depthTexture.magFilter=hn):(G.map.depthTexture.compareFunction=null,G.map.depthTexture.minFilter=zt,G.map.depthTexture.magFilter=zt);G.camera.updateProjectionMatrix()}G.map.isWebGLCubeRenderTarget!==!0&&(G.map.width!==s.x||G.map.height!==s.y)&&G.map.setSize(s.x,s.y);let Q=G.map.isWebGLCubeRenderTarget?6:G.getViewportCount();J.isPointLight!==!0&&G.updateMatrices(J,E);let ee=(G.camera.layers.mask&4294967294)!==0?G.camera.layers:E.layers;for(let Me=0;Me<Q;Me++){let Fe=G.getCamera(Me);if(J.isPointLight){let Z=G.camera,me=G.matrix,ye=J.distance||Z.far;ye!==Z.far&&(Z.far=ye,Z.updateProjectionMatrix()),ha.setFromMatrixPosition(J.matrixWorld),Z.position.copy(ha),Id.copy(Z.position),Id.add(Rw[Me]),Z.up.copy(Cw[Me]),Z.lookAt(Id),Z.updateMatrixWorld(),me.makeTranslation(-ha.x,-ha.y,-ha.z),kg.multiplyMatrices(Z.projectionMatrix,Z.matrixWorldInverse),G._frustum.setFromProjectionMatrix(kg,Z.coordinateSystem,Z.reversedDepth)}if(G.map.isWebGLCubeRenderTarget)n.setRenderTarget(G.map,Me),n.clear();else{Me===0&&(n.setRenderTarget(G.map),n.clear());let Z=G.getViewport(Me);o.set(r.x*Z.x,r.y*Z.y,r.x*Z.z,r.y*Z.w),z.viewport(o)}i=G.getFrustum(Me),b(_,E,Fe,J,ee,this.type)}G.isPointLightShadow!==!0&&this.type===Lr&&M(G,E),G.needsUpdate=!1}g=this.type,p.needsUpdate=!1,n.setRenderTarget(k,D,U)};function M(R,_){let E=e.update(y);d.defines.VSM_SAMPLES!==R.blurSamples&&(d.defines.VSM_SAMPLES=R.blurSamples,u.defines.VSM_SAMPLES=R.blurSamples,d.needsUpdate=!0,u.needsUpdate=!0),R.mapPass===null?R.mapPass=new un(s.x,s.y,{format:cs,type:ti}):(R.mapPass.width!==R.map.width||R.mapPass.height!==R.map.height)&&R.mapPass.setSize(R.map.width,R.map.height),d.uniforms.shadow_pass.value=R.map.depthTexture,d.uniforms.resolution.value.set(R.map.width,R.map.height),d.uniforms.radius.value=R.radius,n.setRenderTarget(R.mapPass),n.clear(),n.renderBufferDirect(_,null,E,d,y,null),u.uniforms.shadow_pass.value=R.mapPass.texture,u.uniforms.resolution.value.set(R.map.width,R.map.height),u.uniforms.radius.value=R.radius,n.setRenderTarget(R.map),n.clear(),n.renderBufferDirect(_,null,E,u,y,null)}function w(R,_,E,k){let D=null,U=E.isPointLight===!0?R.customDistanceMaterial:R.customDepthMaterial;if(U!==void 0)D=U;else if(D=E.isPointLight===!0?l:a,n.localClippingEnabled&&_.clipShadows===!0&&Array.isArray(_.clippingPlanes)&&_.clippingPlanes.length!==0||_.displacementMap&&_.displacementScale!==0||_.alphaMap&&_.alphaTest>0||_.map&&_.alphaTest>0||_.alphaToCoverage===!0){let z=D.uuid,H=_.uuid,L=c[z];L===void 0&&(L={},c[z]=L);let q=L[H];q===void 0&&(q=D.clone(),L[H]=q,_.addEventListener("dispose",C)),D=q}if(D.visible=_.visible,D.wireframe=_.wireframe,k===Lr?D.side=_.shadowSide!==null?_.shadowSide:_.side:D.side=_.shadowSide!==null?_.shadowSide:f[_.side],D.alphaMap=_.alphaMap,D.alphaTest=_.alphaToCoverage===!0?.5:_.alphaTest,D.map=_.map,D.clipShadows=_.clipShadows,D.clippingPlanes=_.clippingPlanes,D.clipIntersection=_.clipIntersection,D.displacementMap=_.displacementMap,D.displacementScale=_.displacementScale,D.displacementBias=_.displacementBias,D.wireframeLinewidth=_.wireframeLinewidth,D.linewidth=_.linewidth,E.isPointLight===!0&&D.isMeshDistanceMaterial===!0){let z=n.properties.get(D);z.light=E}return D}function b(R,_,E,k,D,U){if(R.visible===!1)return;if(R.layers.test(D)&&(R.isMesh||R.isLine||R.isPoints)&&(R.castShadow||R.receiveShadow&&U===Lr)&&(!R.frustumCulled||R.intersectsFrustum(i))){R.modelViewMatrix.multiplyMatrices(E.matrixWorldInverse,R.matrixWorld);let L=e.update(R),q=R.material;if(Array.isArray(q)){let J=L.groups;for(let G=0,ne=J.length;G<ne;G++){let X=J[G],Q=q[X.materialIndex];if(Q&&Q.visible){let ee=w(R,Q,k,U);R.onBeforeShadow(n,R,_,E,L,ee,X),n.renderBufferDirect(E,null,L,ee,R,X),R.onAfterShadow(n,R,_,E,L,ee,X)}}}else if(q.visible){let J=w(R,q,k,U);R.onBeforeShadow(n,R,_,E,L,J,null),n.renderBufferDirect(E,null,L,J,R,null),R.onAfterShadow(n,R,_,E,L,J,null)}}let H=R.children;for(let L=0,q=H.length;L<q;L++)b(H[L],_,E,k,D,U)}function C(R){R.target.removeEventListener("dispose",C);for(let E in c){let k=c[E],D=R.target.uuid;D in k&&(k[D].dispose(),delete k[D])}}}function Iw(n,e){function t(){let P=!1,K=new tt,W=null,le=new tt(0,0,0,0);return{setMask:function(se){W!==se&&!P&&(n.colorMask(se,se,se,se),W=se)},setLocked:function(se){P=se},setClear:function(se,oe,Te,He,ie){ie===!0&&(se*=He,oe*=He,Te*=He),K.set(se,oe,Te,He),le.equals(K)===!1&&(n.clearColor(se,oe,Te,He),le.copy(K))},reset:function(){P=!1,W=null,le.set(-1,0,0,0)}}}function i(){let P=!1,K=!1,W=null,le=null,se=null;return{setReversed:function(oe){if(K!==oe){let Te=e.get("EXT_clip_control");oe?Te.clipControlEXT(Te.LOWER_LEFT_EXT,Te.ZERO_TO_ONE_EXT):Te.clipControlEXT(Te.LOWER_LEFT_EXT,Te.NEGATIVE_ONE_TO_ONE_EXT),K=oe;let He=se;se=null,this.setClear(He)}},getReversed:function(){return K},setTest:function(oe){oe?ge(n.DEPTH_TEST):ze(n.DEPTH_TEST)},setMask:function(oe){W!==oe&&!P&&(n.depthMask(oe),W=oe)},setFunc:function(oe){if(K&&(oe=ug[oe]),le!==oe){switch(oe){case Sl:n.depthFunc(n.NEVER);break;case bl:n.depthFunc(n.ALWAYS);break;case Ml:n.depthFunc(n.LESS);break;case vr:n.depthFunc(n.LEQUAL);break;case wl:n.depthFunc(n.EQUAL);break;case El:n.depthFunc(n.GEQUAL);break;case Tl:n.depthFunc(n.GREATER);break;case Al:n.depthFunc(n.NOTEQUAL);break;default:n.depthFunc(n.LEQUAL)}le=oe}},setLocked:function(oe){P=oe},setClear:function(oe){se!==oe&&(se=oe,K&&(oe=1-oe),n.clearDepth(oe))},reset:function(){P=!1,W=null,le=null,se=null,K=!1}}}function s(){let P=!1,K=null,W=null,le=null,se=null,oe=null,Te=null,He=null,ie=null;return{setTest:function(Ae){P||(Ae?ge(n.STENCIL_TEST):ze(n.STENCIL_TEST))},setMask:function(Ae){K!==Ae&&!P&&(n.stencilMask(Ae),K=Ae)},setFunc:function(Ae,Ve,pe){(W!==Ae||le!==Ve||se!==pe)&&(n.stencilFunc(Ae,Ve,pe),W=Ae,le=Ve,se=pe)},setOp:function(Ae,Ve,pe){(oe!==Ae||Te!==Ve||He!==pe)&&(n.stencilOp(Ae,Ve,pe),oe=Ae,Te=Ve,He=pe)},setLocked:function(Ae){P=Ae},setClear:function(Ae){ie!==Ae&&(n.clearStencil(Ae),ie=Ae)},reset:function(){P=!1,K=null,W=null,le=null,se=null,oe=null,Te=null,He=null,ie=null}}}let r=new t,o=new i,a=new s,l={},c=new WeakMap,h={},f={},d={},u=new WeakMap,m=[],y=null,p=!1,g=null,M=null,w=null,b=null,C=null,R=null,_=null,E=new Re(0,0,0),k=0,D=!1,U=null,z=null,H=null,L=null,q=null,J=n.getParameter(n.MAX_COMBINED_TEXTURE_IMAGE_UNITS),G=!1,ne=0,X=n.getParameter(n.VERSION);X.indexOf("WebGL")!==-1?(ne=parseFloat(/^WebGL (\d)/.exec(X)[1]),G=ne>=1):X.indexOf("OpenGL ES")!==-1&&(ne=parseFloat(/^OpenGL ES (\d)/.exec(X)[1]),G=ne>=2);let Q=null,ee={},Me=n.getParameter(n.SCISSOR_BOX),Fe=n.getParameter(n.VIEWPORT),Z=new tt().fromArray(Me),me=new tt().fromArray(Fe);function ye(P,K,W,le){let se=new Uint8Array(4),oe=n.createTexture();n.bindTexture(P,oe),n.texParameteri(P,n.TEXTURE_MIN_FILTER,n.NEAREST),n.texParameteri(P,n.TEXTURE_MAG_FILTER,n.NEAREST);for(let Te=0;Te<W;Te++)P===n.TEXTURE_3D||P===n.TEXTURE_2D_ARRAY?n.texImage3D(K,0,n.RGBA,1,1,le,0,n.RGBA,n.UNSIGNED_BYTE,se):n.texImage2D(K+Te,0,n.RGBA,1,1,0,n.RGBA,n.UNSIGNED_BYTE,se);return oe}let Pe={};Pe[n.TEXTURE_2D]=ye(n.TEXTURE_2D,n.TEXTURE_2D,1),Pe[n.TEXTURE_CUBE_MAP]=ye(n.TEXTURE_CUBE_MAP,n.TEXTURE_CUBE_MAP_POSITIVE_X,6),Pe[n.TEXTURE_2D_ARRAY]=ye(n.TEXTURE_2D_ARRAY,n.TEXTURE_2D_ARRAY,1,1),Pe[n.TEXTURE_3D]=ye(n.TEXTURE_3D,n.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),ge(n.DEPTH_TEST),o.setFunc(vr),pn(!1),pt(Ku),ge(n.CULL_FACE),Vt(Us);function ge(P){h[P]!==!0&&(n.enable(P),h[P]=!0)}function ze(P){h[P]!==!1&&(n.disable(P),h[P]=!1)}function St(P,K){return d[P]!==K?(n.bindFramebuffer(P,K),d[P]=K,P===n.DRAW_FRAMEBUFFER&&(d[n.FRAMEBUFFER]=K),P===n.FRAMEBUFFER&&(d[n.DRAW_FRAMEBUFFER]=K),!0):!1}function Le(P,K){let W=m,le=!1;if(P){W=u.get(K),W===void 0&&(W=[],u.set(K,W));let se=P.textures;if(W.length!==se.length||W[0]!==n.COLOR_ATTACHMENT0){for(let oe=0,Te=se.length;oe<Te;oe++)W[oe]=n.COLOR_ATTACHMENT0+oe;W.length=se.length,le=!0}}else W[0]!==n.BACK&&(W[0]=n.BACK,le=!0);le&&n.drawBuffers(W)}function rt(P){return y!==P?(n.useProgram(P),y=P,!0):!1}let at={[Os]:n.FUNC_ADD,[Nm]:n.FUNC_SUBTRACT,[Um]:n.FUNC_REVERSE_SUBTRACT};at[Om]=n.MIN,at[Fm]=n.MAX;let qe={[Bm]:n.ZERO,[km]:n.ONE,[zm]:n.SRC_COLOR,[ed]:n.SRC_ALPHA,[qm]:n.SRC_ALPHA_SATURATE,[Wm]:n.DST_COLOR,[Gm]:n.DST_ALPHA,[Vm]:n.ONE_MINUS_SRC_COLOR,[td]:n.ONE_MINUS_SRC_ALPHA,[Xm]:n.ONE_MINUS_DST_COLOR,[Hm]:n.ONE_MINUS_DST_ALPHA,[Ym]:n.CONSTANT_COLOR,[$m]:n.ONE_MINUS_CONSTANT_COLOR,[Zm]:n.CONSTANT_ALPHA,[Km]:n.ONE_MINUS_CONSTANT_ALPHA};function Vt(P,K,W,le,se,oe,Te,He,ie,Ae){if(P===Us){p===!0&&(ze(n.BLEND),p=!1);return}if(p===!1&&(ge(n.BLEND),p=!0),P!==Dm){if(P!==g||Ae!==D){if((M!==Os||C!==Os)&&(n.blendEquation(n.FUNC_ADD),M=Os,C=Os),Ae)switch(P){case Dr:n.blendFuncSeparate(n.ONE,n.ONE_MINUS_SRC_ALPHA,n.ONE,n.ONE_MINUS_SRC_ALPHA);break;case Ju:n.blendFunc(n.ONE,n.ONE);break;case ju:n.blendFuncSeparate(n.ZERO,n.ONE_MINUS_SRC_COLOR,n.ZERO,n.ONE);break;case Qu:n.blendFuncSeparate(n.DST_COLOR,n.ONE_MINUS_SRC_ALPHA,n.ZERO,n.ONE);break;default:De("WebGLState: Invalid blending: ",P);break}else switch(P){case Dr:n.blendFuncSeparate(n.SRC_ALPHA,n.ONE_MINUS_SRC_ALPHA,n.ONE,n.ONE_MINUS_SRC_ALPHA);break;case Ju:n.blendFuncSeparate(n.SRC_ALPHA,n.ONE,n.ONE,n.ONE);break;case ju:De("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Qu:De("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:De("WebGLState: Invalid blending: ",P);break}w=null,b=null,R=null,_=null,E.set(0,0,0),k=0,g=P,D=Ae}return}se=se||K,oe=oe||W,Te=Te||le,(K!==M||se!==C)&&(n.blendEquationSeparate(at[K],at[se]),M=K,C=se),(W!==w||le!==b||oe!==R||Te!==_)&&(n.blendFuncSeparate(qe[W],qe[le],qe[oe],qe[Te]),w=W,b=le,R=oe,_=Te),(He.equals(E)===!1||ie!==k)&&(n.blendColor(He.r,He.g,He.b,ie),E.copy(He),k=ie),g=P,D=!1}function Tt(P,K){P.side===zn?ze(n.CULL_FACE):ge(n.CULL_FACE);let W=P.side===dn;K&&(W=!W),pn(W),P.blending===Dr&&P.transparent===!1?Vt(Us):Vt(P.blending,P.blendEquation,P.blendSrc,P.blendDst,P.blendEquationAlpha,P.blendSrcAlpha,P.blendDstAlpha,P.blendColor,P.blendAlpha,P.premultipliedAlpha),o.setFunc(P.depthFunc),o.setTest(P.depthTest),o.setMask(P.depthWrite),r.setMask(P.colorWrite);let le=P.stencilWrite;a.setTest(le),le&&(a.setMask(P.stencilWriteMask),a.setFunc(P.stencilFunc,P.stencilRef,P.stencilFuncMask),a.setOp(P.stencilFail,P.stencilZFail,P.stencilZPass)),Nt(P.polygonOffset,P.polygonOffsetFactor,P.polygonOffsetUnits),P.alphaToCoverage===!0?ge(n.SAMPLE_ALPHA_TO_COVERAGE):ze(n.SAMPLE_ALPHA_TO_COVERAGE)}function pn(P){U!==P&&(P?n.frontFace(n.CW):n.frontFace(n.CCW),U=P)}function pt(P){P!==Pm?(ge(n.CULL_FACE),P!==z&&(P===Ku?n.cullFace(n.BACK):P===Im?n.cullFace(n.FRONT):n.cullFace(n.FRONT_AND_BACK))):ze(n.CULL_FACE),z=P}function si(P){P!==H&&(G&&n.lineWidth(P),H=P)}function Nt(P,K,W){P?(ge(n.POLYGON_OFFSET_FILL),(L!==K||q!==W)&&(L=K,q=W,o.getReversed()&&(K=-K,W=-W),n.polygonOffset(K,W))):ze(n.POLYGON_OFFSET_FILL)}function Dn(P){P?ge(n.SCISSOR_TEST):ze(n.SCISSOR_TEST)}function Nn(P){P===void 0&&(P=n.TEXTURE0+J-1),Q!==P&&(n.activeTexture(P),Q=P)}function Un(P,K,W){W===void 0&&(Q===null?W=n.TEXTURE0+J-1:W=Q);let le=ee[W];le===void 0&&(le={type:void 0,texture:void 0},ee[W]=le),(le.type!==P||le.texture!==K)&&(Q!==W&&(n.activeTexture(W),Q=W),n.bindTexture(P,K||Pe[P]),le.type=P,le.texture=K)}function N(){let P=ee[Q];P!==void 0&&P.type!==void 0&&(n.bindTexture(P.type,null),P.type=void 0,P.texture=void 0)}function On(){try{n.compressedTexImage2D(...arguments)}catch(P){De("WebGLState:",P)}}function ut(){try{n.compressedTexImage3D(...arguments)}catch(P){De("WebGLState:",P)}}function dt(){try{n.texSubImage2D(...arguments)}catch(P){De("WebGLState:",P)}}function fe(){try{n.texSubImage3D(...arguments)}catch(P){De("WebGLState:",P)}}function At(){try{n.compressedTexSubImage2D(...arguments)}catch(P){De("WebGLState:",P)}}function Ie(){try{n.compressedTexSubImage3D(...arguments)}catch(P){De("WebGLState:",P)}}function Oe(){try{n.texStorage2D(...arguments)}catch(P){De("WebGLState:",P)}}function T(){try{n.texStorage3D(...arguments)}catch(P){De("WebGLState:",P)}}function x(){try{n.texImage2D(...arguments)}catch(P){De("WebGLState:",P)}}function F(){try{n.texImage3D(...arguments)}catch(P){De("WebGLState:",P)}}function te(P){return f[P]!==void 0?f[P]:n.getParameter(P)}function j(P,K){f[P]!==K&&(n.pixelStorei(P,K),f[P]=K)}function re(P){Z.equals(P)===!1&&(n.scissor(P.x,P.y,P.z,P.w),Z.copy(P))}function he(P){me.equals(P)===!1&&(n.viewport(P.x,P.y,P.z,P.w),me.copy(P))}function Y(P,K){let W=c.get(K);W===void 0&&(W=new WeakMap,c.set(K,W));let le=W.get(P);le===void 0&&(le=n.getUniformBlockIndex(K,P.name),n.uniformBlockBinding(K,le,le),W.set(P,le))}function $(P,K,W){let se=c.get(K).get(P);l[se]!==W&&(n.bindBufferBase(n.UNIFORM_BUFFER,se,W),l[se]=W)}function ae(){n.disable(n.BLEND),n.disable(n.CULL_FACE),n.disable(n.DEPTH_TEST),n.disable(n.POLYGON_OFFSET_FILL),n.disable(n.SCISSOR_TEST),n.disable(n.STENCIL_TEST),n.disable(n.SAMPLE_ALPHA_TO_COVERAGE),n.blendEquation(n.FUNC_ADD),n.blendFunc(n.ONE,n.ZERO),n.blendFuncSeparate(n.ONE,n.ZERO,n.ONE,n.ZERO),n.blendColor(0,0,0,0),n.colorMask(!0,!0,!0,!0),n.clearColor(0,0,0,0),n.depthMask(!0),n.depthFunc(n.LESS),o.setReversed(!1),n.clearDepth(1),n.stencilMask(4294967295),n.stencilFunc(n.ALWAYS,0,4294967295),n.stencilOp(n.KEEP,n.KEEP,n.KEEP),n.clearStencil(0),n.cullFace(n.BACK),n.frontFace(n.CCW),n.polygonOffset(0,0),n.activeTexture(n.TEXTURE0),n.bindFramebuffer(n.FRAMEBUFFER,null),n.bindFramebuffer(n.DRAW_FRAMEBUFFER,null),n.bindFramebuffer(n.READ_FRAMEBUFFER,null),n.useProgram(null),n.lineWidth(1),n.scissor(0,0,n.canvas.width,n.canvas.height),n.viewport(0,0,n.canvas.width,n.canvas.height),n.pixelStorei(n.PACK_ALIGNMENT,4),n.pixelStorei(n.UNPACK_ALIGNMENT,4),n.pixelStorei(n.UNPACK_FLIP_Y_WEBGL,!1),n.pixelStorei(n.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),n.pixelStorei(n.UNPACK_COLORSPACE_CONVERSION_WEBGL,n.BROWSER_DEFAULT_WEBGL),n.pixelStorei(n.PACK_ROW_LENGTH,0),n.pixelStorei(n.PACK_SKIP_PIXELS,0),n.pixelStorei(n.PACK_SKIP_ROWS,0),n.pixelStorei(n.UNPACK_ROW_LENGTH,0),n.pixelStorei(n.UNPACK_IMAGE_HEIGHT,0),n.pixelStorei(n.UNPACK_SKIP_PIXELS,0),n.pixelStorei(n.UNPACK_SKIP_ROWS,0),n.pixelStorei(n.UNPACK_SKIP_IMAGES,0),h={},f={},Q=null,ee={},d={},l={},u=new WeakMap,m=[],y=null,p=!1,g=null,M=null,w=null,b=null,C=null,R=null,_=null,E=new Re(0,0,0),k=0,D=!1,U=null,z=null,H=null,L=null,q=null,Z.set(0,0,n.canvas.width,n.canvas.height),me.set(0,0,n.canvas.width,n.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:ge,disable:ze,bindFramebuffer:St,drawBuffers:Le,useProgram:rt,setBlending:Vt,setMaterial:Tt,setFlipSided:pn,setCullFace:pt,setLineWidth:si,setPolygonOffset:Nt,setScissorTest:Dn,activeTexture:Nn,bindTexture:Un,unbindTexture:N,compressedTexImage2D:On,compressedTexImage3D:ut,texImage2D:x,texImage3D:F,pixelStorei:j,getParameter:te,updateUBOMapping:Y,uniformBlockBinding:$,texStorage2D:Oe,texStorage3D:T,texSubImage2D:dt,texSubImage3D:fe,compressedTexSubImage2D:At,compressedTexSubImage3D:Ie,scissor:re,viewport:he,reset:ae}}function Lw(n,e,t,i,s,r,o){let a=e.has("WEBGL_multisampled_render_to_texture")?e.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new Ee,h=new WeakMap,f=new Set,d,u=new WeakMap,m=new Set,y=new FinalizationRegistry(T=>m.delete(T)),p=!1;try{p=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function g(T,x){return p?new OffscreenCanvas(T,x):Co("canvas")}function M(T,x,F){let te=1,j=Oe(T);if((j.width>F||j.height>F)&&(te=F/Math.max(j.width,j.height)),te<1)if(typeof HTMLImageElement<"u"&&T instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&T instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&T instanceof ImageBitmap||typeof VideoFrame<"u"&&T instanceof VideoFrame){let re=Math.floor(te*j.width),he=Math.floor(te*j.height);d===void 0&&(d=g(re,he));let Y=x?g(re,he):d;return Y.width=re,Y.height=he,Y.getContext("2d").drawImage(T,0,0,re,he),Ce("WebGLRenderer: Texture has been resized from ("+j.width+"x"+j.height+") to ("+re+"x"+he+")."),Y}else return"data"in T&&Ce("WebGLRenderer: Image in DataTexture is too big ("+j.width+"x"+j.height+")."),T;return T}function w(T){return T.generateMipmaps}function b(T){n.generateMipmap(T)}function C(T){return T.isWebGLCubeRenderTarget?n.TEXTURE_CUBE_MAP:T.isWebGL3DRenderTarget?n.TEXTURE_3D:T.isWebGLArrayRenderTarget||T.isCompressedArrayTexture?n.TEXTURE_2D_ARRAY:n.TEXTURE_2D}function R(T,x,F,te,j,re=!1){if(T!==null){if(n[T]!==void 0)return n[T];Ce("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+T+"'")}let he;te&&(he=e.get("EXT_texture_norm16"),he||Ce("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let Y=x;if(x===n.RED&&(F===n.FLOAT&&(Y=n.R32F),F===n.HALF_FLOAT&&(Y=n.R16F),F===n.UNSIGNED_BYTE&&(Y=n.R8),F===n.UNSIGNED_SHORT&&he&&(Y=he.R16_EXT),F===n.SHORT&&he&&(Y=he.R16_SNORM_EXT)),x===n.RED_INTEGER&&(F===n.UNSIGNED_BYTE&&(Y=n.R8UI),F===n.UNSIGNED_SHORT&&(Y=n.R16UI),F===n.UNSIGNED_INT&&(Y=n.R32UI),F===n.BYTE&&(Y=n.R8I),F===n.SHORT&&(Y=n.R16I),F===n.INT&&(Y=n.R32I)),x===n.RG&&(F===n.FLOAT&&(Y=n.RG32F),F===n.HALF_FLOAT&&(Y=n.RG16F),F===n.UNSIGNED_BYTE&&(Y=n.RG8),F===n.UNSIGNED_SHORT&&he&&(Y=he.RG16_EXT),F===n.SHORT&&he&&(Y=he.RG16_SNORM_EXT)),x===n.RG_INTEGER&&(F===n.UNSIGNED_BYTE&&(Y=n.RG8UI),F===n.UNSIGNED_SHORT&&(Y=n.RG16UI),F===n.UNSIGNED_INT&&(Y=n.RG32UI),F===n.BYTE&&(Y=n.RG8I),F===n.SHORT&&(Y=n.RG16I),F===n.INT&&(Y=n.RG32I)),x===n.RGB_INTEGER&&(F===n.UNSIGNED_BYTE&&(Y=n.RGB8UI),F===n.UNSIGNED_SHORT&&(Y=n.RGB16UI),F===n.UNSIGNED_INT&&(Y=n.RGB32UI),F===n.BYTE&&(Y=n.RGB8I),F===n.SHORT&&(Y=n.RGB16I),F===n.INT&&(Y=n.RGB32I)),x===n.RGBA_INTEGER&&(F===n.UNSIGNED_BYTE&&(Y=n.RGBA8UI),F===n.UNSIGNED_SHORT&&(Y=n.RGBA16UI),F===n.UNSIGNED_INT&&(Y=n.RGBA32UI),F===n.BYTE&&(Y=n.RGBA8I),F===n.SHORT&&(Y=n.RGBA16I),F===n.INT&&(Y=n.RGBA32I)),x===n.RGB&&(F===n.UNSIGNED_SHORT&&he&&(Y=he.RGB16_EXT),F===n.SHORT&&he&&(Y=he.RGB16_SNORM_EXT),F===n.UNSIGNED_INT_5_9_9_9_REV&&(Y=n.RGB9_E5),F===n.UNSIGNED_INT_10F_11F_11F_REV&&(Y=n.R11F_G11F_B10F)),x===n.RGBA){let $=re?Ro:Ze.getTransfer(j);F===n.FLOAT&&(Y=n.RGBA32F),F===n.HALF_FLOAT&&(Y=n.RGBA16F),F===n.UNSIGNED_BYTE&&(Y=$===st?n.SRGB8_ALPHA8:n.RGBA8),F===n.UNSIGNED_SHORT&&he&&(Y=he.RGBA16_EXT),F===n.SHORT&&he&&(Y=he.RGBA16_SNORM_EXT),F===n.UNSIGNED_SHORT_4_4_4_4&&(Y=n.RGBA4),F===n.UNSIGNED_SHORT_5_5_5_1&&(Y=n.RGB5_A1)}return(Y===n.R16F||Y===n.R32F||Y===n.RG16F||Y===n.RG32F||Y===n.RGBA16F||Y===n.RGBA32F)&&e.get("EXT_color_buffer_float"),Y}function _(T,x){let F;return T?x===null||x===Qn||x===Bs?F=n.DEPTH24_STENCIL8:x===ei?F=n.DEPTH32F_STENCIL8:x===Ur&&(F=n.DEPTH24_STENCIL8,Ce("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):x===null||x===Qn||x===Bs?F=n.DEPTH_COMPONENT24:x===ei?F=n.DEPTH_COMPONENT32F:x===Ur&&(F=n.DEPTH_COMPONENT16),F}function E(T,x){return w(T)===!0||T.isFramebufferTexture&&T.minFilter!==zt&&T.minFilter!==hn?Math.log2(Math.max(x.width,x.height))+1:T.mipmaps.length>0?T.mipmaps.length:T.isCompressedTexture&&Array.isArray(T.image)?x.mipmaps.length:1}function k(T){let x=new WeakRef(T);i.get(T).__ref=x,m.add(x),y.register(T,x,x)}function D(T){let x=i.get(T).__ref;x!==void 0&&(m.delete(x),y.unregister(x))}function U(T){H(T.target)}function z(T){L(T.target)}function H(T){T.removeEventListener("dispose",U),D(T),J(T),T.isVideoTexture&&h.delete(T),T.isHTMLTexture&&f.delete(T)}function L(T){T.removeEventListener("dispose",z),D(T),ne(T)}function q(){for(let T of m){let x=T.deref();x!==void 0&&(x.isRenderTarget===!0?L(x):H(x))}m.clear(),f.clear()}function J(T){let x=i.get(T);if(x.__webglInit===void 0)return;let F=T.source,te=u.get(F);if(te){let j=te[x.__cacheKey];j.usedTimes--,j.usedTimes===0&&G(T),Object.keys(te).length===0&&u.delete(F)}i.remove(T)}function G(T){let x=i.get(T);n.deleteTexture(x.__webglTexture);let F=T.source,te=u.get(F);delete te[x.__cacheKey],o.memory.textures--}function ne(T){let x=i.get(T);x.__depthDisposeCallback&&x.__depthDisposeCallback();let F=T.depthTexture;if(F&&F.renderTarget===T&&H(F),T.isWebGLCubeRenderTarget)for(let j=0;j<6;j++){if(Array.isArray(x.__webglFramebuffer[j]))for(let re=0;re<x.__webglFramebuffer[j].length;re++)n.deleteFramebuffer(x.__webglFramebuffer[j][re]);else n.deleteFramebuffer(x.__webglFramebuffer[j]);x.__webglDepthbuffer&&n.deleteRenderbuffer(x.__webglDepthbuffer[j])}else{if(Array.isArray(x.__webglFramebuffer))for(let j=0;j<x.__webglFramebuffer.length;j++)n.deleteFramebuffer(x.__webglFramebuffer[j]);else n.deleteFramebuffer(x.__webglFramebuffer);if(x.__webglDepthbuffer&&n.deleteRenderbuffer(x.__webglDepthbuffer),x.__webglMultisampledFramebuffer&&n.deleteFramebuffer(x.__webglMultisampledFramebuffer),x.__webglColorRenderbuffer)for(let j=0;j<x.__webglColorRenderbuffer.length;j++)x.__webglColorRenderbuffer[j]&&n.deleteRenderbuffer(x.__webglColorRenderbuffer[j]);x.__webglDepthRenderbuffer&&n.deleteRenderbuffer(x.__webglDepthRenderbuffer)}let te=T.textures;for(let j=0,re=te.length;j<re;j++){let he=i.get(te[j]);he.__webglTexture&&(n.deleteTexture(he.__webglTexture),o.memory.textures--),i.remove(te[j])}i.remove(T)}let X=0;function Q(){X=0}function ee(){return X}function Me(T){X=T}function Fe(){let T=X;return T>=s.maxTextures&&Ce("WebGLTextures: Trying to use "+(T+1)+" texture units while this GPU supports only "+s.maxTextures),X+=1,T}function Z(T){let x=[];return x.push(T.wrapS),x.push(T.wrapT),x.push(T.wrapR||0),x.push(T.magFilter),x.push(T.minFilter),x.push(T.anisotropy),x.push(T.internalFormat),x.push(T.format),x.push(T.type),x.push(T.generateMipmaps),x.push(T.mipmapsAutoUpdate),x.push(T.premultiplyAlpha),x.push(T.flipY),x.push(T.unpackAlignment),x.push(T.colorSpace),x.join()}function me(T,x){let F=i.get(T);if(T.isVideoTexture&&At(T),T.isRenderTargetTexture===!1&&T.isExternalTexture!==!0&&T.version>0&&F.__version!==T.version){let te=T.image;if(te===null)Ce("WebGLRenderer: Texture marked for update but no image data found.");else if(te.complete===!1)Ce("WebGLRenderer: Texture marked for update but image is incomplete");else{Tt(F,T,x);return}}else T.isExternalTexture&&(F.__webglTexture=T.sourceTexture?T.sourceTexture:null);t.bindTexture(n.TEXTURE_2D,F.__webglTexture,n.TEXTURE0+x)}function ye(T,x){let F=i.get(T);if(T.isRenderTargetTexture===!1&&T.version>0&&F.__version!==T.version){Tt(F,T,x);return}else T.isExternalTexture&&(F.__webglTexture=T.sourceTexture?T.sourceTexture:null);t.bindTexture(n.TEXTURE_2D_ARRAY,F.__webglTexture,n.TEXTURE0+x)}function Pe(T,x){let F=i.get(T);if(T.isRenderTargetTexture===!1&&T.version>0&&F.__version!==T.version){Tt(F,T,x);return}t.bindTexture(n.TEXTURE_3D,F.__webglTexture,n.TEXTURE0+x)}function ge(T,x){let F=i.get(T);if(T.version>0&&F.__version!==T.version){pn(F,T,x);return}t.bindTexture(n.TEXTURE_CUBE_MAP,F.__webglTexture,n.TEXTURE0+x)}let ze={[yr]:n.REPEAT,[ci]:n.CLAMP_TO_EDGE,[Rl]:n.MIRRORED_REPEAT},St={[zt]:n.NEAREST,[Qm]:n.NEAREST_MIPMAP_NEAREST,[ta]:n.NEAREST_MIPMAP_LINEAR,[hn]:n.LINEAR,[nc]:n.LINEAR_MIPMAP_NEAREST,[Ui]:n.LINEAR_MIPMAP_LINEAR},Le={[ig]:n.NEVER,[yd]:n.ALWAYS,[sg]:n.LESS,[_d]:n.LEQUAL,[rg]:n.EQUAL,[vd]:n.GEQUAL,[og]:n.GREATER,[ag]:n.NOTEQUAL};function rt(T,x){if(x.type===ei&&e.has("OES_texture_float_linear")===!1&&(x.magFilter===hn||x.magFilter===nc||x.magFilter===ta||x.magFilter===Ui||x.minFilter===hn||x.minFilter===nc||x.minFilter===ta||x.minFilter===Ui)&&Ce("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),n.texParameteri(T,n.TEXTURE_WRAP_S,ze[x.wrapS]),n.texParameteri(T,n.TEXTURE_WRAP_T,ze[x.wrapT]),(T===n.TEXTURE_3D||T===n.TEXTURE_2D_ARRAY)&&n.texParameteri(T,n.TEXTURE_WRAP_R,ze[x.wrapR]),n.texParameteri(T,n.TEXTURE_MAG_FILTER,St[x.magFilter]),n.texParameteri(T,n.TEXTURE_MIN_FILTER,St[x.minFilter]),x.compareFunction&&(n.texParameteri(T,n.TEXTURE_COMPARE_MODE,n.COMPARE_REF_TO_TEXTURE),n.texParameteri(T,n.TEXTURE_COMPARE_FUNC,Le[x.compareFunction])),e.has("EXT_texture_filter_anisotropic")===!0){if(x.magFilter===zt||x.minFilter!==ta&&x.minFilter!==Ui||x.type===ei&&e.has("OES_texture_float_linear")===!1)return;if(x.anisotropy>1||i.get(x).__currentAnisotropy){let F=e.get("EXT_texture_filter_anisotropic");n.texParameterf(T,F.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(x.anisotropy,s.getMaxAnisotropy())),i.get(x).__currentAnisotropy=x.anisotropy}}}function at(T,x){let F=!1;T.__webglInit===void 0&&(T.__webglInit=!0,x.addEventListener("dispose",U),k(x));let te=x.source,j=u.get(te);j===void 0&&(j={},u.set(te,j));let re=Z(x);if(re!==T.__cacheKey){j[re]===void 0&&(j[re]={texture:n.createTexture(),usedTimes:0},o.memory.textures++,F=!0),j[re].usedTimes++;let he=j[T.__cacheKey];he!==void 0&&(j[T.__cacheKey].usedTimes--,he.usedTimes===0&&G(x)),T.__cacheKey=re,T.__webglTexture=j[re].texture}return F}function qe(T,x,F){return Math.floor(Math.floor(T/F)/x)}function Vt(T,x,F,te){let re=T.updateRanges;if(re.length===0)t.texSubImage2D(n.TEXTURE_2D,0,0,0,x.width,x.height,F,te,x.data);else{re.sort((P,K)=>P.start-K.start);let he=0;for(let P=1;P<re.length;P++){let K=re[he],W=re[P],le=K.start+K.count,se=qe(W.start,x.width,4),oe=qe(K.start,x.width,4);W.start<=le+1&&se===oe&&qe(W.start+W.count-1,x.width,4)===se?K.count=Math.max(K.count,W.start+W.count-K.start):(++he,re[he]=W)}re.length=he+1;let Y=t.getParameter(n.UNPACK_ROW_LENGTH),$=t.getParameter(n.UNPACK_SKIP_PIXELS),ae=t.getParameter(n.UNPACK_SKIP_ROWS);t.pixelStorei(n.UNPACK_ROW_LENGTH,x.width);for(let P=0,K=re.length;P<K;P++){let W=re[P],le=Math.floor(W.start/4),se=Math.ceil(W.count/4),oe=le%x.width,Te=Math.floor(le/x.width),He=se,ie=1;t.pixelStorei(n.UNPACK_SKIP_PIXELS,oe),t.pixelStorei(n.UNPACK_SKIP_ROWS,Te),t.texSubImage2D(n.TEXTURE_2D,0,oe,Te,He,ie,F,te,x.data)}T.clearUpdateRanges(),t.pixelStorei(n.UNPACK_ROW_LENGTH,Y),t.pixelStorei(n.UNPACK_SKIP_PIXELS,$),t.pixelStorei(n.UNPACK_SKIP_ROWS,ae)}}function Tt(T,x,F){let te=n.TEXTURE_2D;(x.isDataArrayTexture||x.isCompressedArrayTexture)&&(te=n.TEXTURE_2D_ARRAY),x.isData3DTexture&&(te=n.TEXTURE_3D);let j=at(T,x),re=x.source;t.bindTexture(te,T.__webglTexture,n.TEXTURE0+F);let he=i.get(re);if(re.version!==he.__version||j===!0){if(t.activeTexture(n.TEXTURE0+F),(typeof ImageBitmap<"u"&&x.image instanceof ImageBitmap)===!1){let ie=Ze.getPrimaries(Ze.workingColorSpace),Ae=x.colorSpace===Fi?null:Ze.getPrimaries(x.colorSpace),Ve=x.colorSpace===Fi||ie===Ae?n.NONE:n.BROWSER_DEFAULT_WEBGL;t.pixelStorei(n.UNPACK_FLIP_Y_WEBGL,x.flipY),t.pixelStorei(n.UNPACK_PREMULTIPLY_ALPHA_WEBGL,x.premultiplyAlpha),t.pixelStorei(n.UNPACK_COLORSPACE_CONVERSION_WEBGL,Ve)}t.pixelStorei(n.UNPACK_ALIGNMENT,x.unpackAlignment);let $=M(x.image,!1,s.maxTextureSize);$=Ie(x,$);let ae=r.convert(x.format,x.colorSpace),P=r.convert(x.type),K=R(x.internalFormat,ae,P,x.normalized,x.colorSpace,x.isVideoTexture);rt(te,x);let W,le=x.mipmaps,se=x.isVideoTexture!==!0,oe=he.__version===void 0||j===!0,Te=re.dataReady,He=E(x,$);if(x.isDepthTexture)K=_(x.format===Oi,x.type),oe&&(se?t.texStorage2D(n.TEXTURE_2D,1,K,$.width,$.height):t.texImage2D(n.TEXTURE_2D,0,K,$.width,$.height,0,ae,P,null));else if(x.isDataTexture)if(le.length>0){se&&oe&&t.texStorage2D(n.TEXTURE_2D,He,K,le[0].width,le[0].height);for(let ie=0,Ae=le.length;ie<Ae;ie++)W=le[ie],se?Te&&t.texSubImage2D(n.TEXTURE_2D,ie,0,0,W.width,W.height,ae,P,W.data):t.texImage2D(n.TEXTURE_2D,ie,K,W.width,W.height,0,ae,P,W.data);x.generateMipmaps=!1}else se?(oe&&t.texStorage2D(n.TEXTURE_2D,He,K,$.width,$.height),Te&&Vt(x,$,ae,P)):t.texImage2D(n.TEXTURE_2D,0,K,$.width,$.height,0,ae,P,$.data);else if(x.isCompressedTexture)if(x.isCompressedArrayTexture){se&&oe&&t.texStorage3D(n.TEXTURE_2D_ARRAY,He,K,le[0].width,le[0].height,$.depth);for(let ie=0,Ae=le.length;ie<Ae;ie++)if(W=le[ie],x.format!==ni)if(ae!==null)if(se){if(Te)if(x.layerUpdates.size>0){let Ve=Cd(W.width,W.height,x.format,x.type);for(let pe of x.layerUpdates){let ot=W.data.subarray(pe*Ve/W.data.BYTES_PER_ELEMENT,(pe+1)*Ve/W.data.BYTES_PER_ELEMENT);t.compressedTexSubImage3D(n.TEXTURE_2D_ARRAY,ie,0,0,pe,W.width,W.height,1,ae,ot)}}else t.compressedTexSubImage3D(n.TEXTURE_2D_ARRAY,ie,0,0,0,W.width,W.height,$.depth,ae,W.data)}else t.compressedTexImage3D(n.TEXTURE_2D_ARRAY,ie,K,W.width,W.height,$.depth,0,W.data,0,0);else Ce("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else se?Te&&t.texSubImage3D(n.TEXTURE_2D_ARRAY,ie,0,0,0,W.width,W.height,$.depth,ae,P,W.data):t.texImage3D(n.TEXTURE_2D_ARRAY,ie,K,W.width,W.height,$.depth,0,ae,P,W.data);x.layerUpdates.size>0&&x.clearLayerUpdates()}else{se&&oe&&t.texStorage2D(n.TEXTURE_2D,He,K,le[0].width,le[0].height);for(let ie=0,Ae=le.length;ie<Ae;ie++)W=le[ie],x.format!==ni?ae!==null?se?Te&&t.compressedTexSubImage2D(n.TEXTURE_2D,ie,0,0,W.width,W.height,ae,W.data):t.compressedTexImage2D(n.TEXTURE_2D,ie,K,W.width,W.height,0,W.data):Ce("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):se?Te&&t.texSubImage2D(n.TEXTURE_2D,ie,0,0,W.width,W.height,ae,P,W.data):t.texImage2D(n.TEXTURE_2D,ie,K,W.width,W.height,0,ae,P,W.data)}else if(x.isDataArrayTexture)if(se){if(oe&&t.texStorage3D(n.TEXTURE_2D_ARRAY,He,K,$.width,$.height,$.depth),Te)if(x.layerUpdates.size>0){let ie=Cd($.width,$.height,x.format,x.type);for(let Ae of x.layerUpdates){let Ve=$.data.subarray(Ae*ie/$.data.BYTES_PER_ELEMENT,(Ae+1)*ie/$.data.BYTES_PER_ELEMENT);t.texSubImage3D(n.TEXTURE_2D_ARRAY,0,0,0,Ae,$.width,$.height,1,ae,P,Ve)}x.clearLayerUpdates()}else t.texSubImage3D(n.TEXTURE_2D_ARRAY,0,0,0,0,$.width,$.height,$.depth,ae,P,$.data)}else t.texImage3D(n.TEXTURE_2D_ARRAY,0,K,$.width,$.height,$.depth,0,ae,P,$.data);else if(x.isData3DTexture)se?(oe&&t.texStorage3D(n.TEXTURE_3D,He,K,$.width,$.height,$.depth),Te&&t.texSubImage3D(n.TEXTURE_3D,0,0,0,0,$.width,$.height,$.depth,ae,P,$.data)):t.texImage3D(n.TEXTURE_3D,0,K,$.width,$.height,$.depth,0,ae,P,$.data);else if(x.isFramebufferTexture){if(oe)if(se)t.texStorage2D(n.TEXTURE_2D,He,K,$.width,$.height);else{let ie=$.width,Ae=$.height;for(let Ve=0;Ve<He;Ve++)t.texImage2D(n.TEXTURE_2D,Ve,K,ie,Ae,0,ae,P,null),ie>>=1,Ae>>=1}}else if(x.isHTMLTexture){if("texElementImage2D"in n){let ie=n.canvas;if(ie.hasAttribute("layoutsubtree")||ie.setAttribute("layoutsubtree","true"),$.parentNode!==ie){ie.appendChild($),f.add(x),ie.onpaint=Ae=>{let Ve=Ae.changedElements;for(let pe of f)Ve.includes(pe.image)&&(pe.needsUpdate=!0)},ie.requestPaint();return}if(n.texElementImage2D.length===3)n.texElementImage2D(n.TEXTURE_2D,n.RGBA8,$);else{let Ve=n.RGBA,pe=n.RGBA,ot=n.UNSIGNED_BYTE;n.texElementImage2D(n.TEXTURE_2D,0,Ve,pe,ot,$)}n.texParameteri(n.TEXTURE_2D,n.TEXTURE_MIN_FILTER,n.LINEAR),n.texParameteri(n.TEXTURE_2D,n.TEXTURE_WRAP_S,n.CLAMP_TO_EDGE),n.texParameteri(n.TEXTURE_2D,n.TEXTURE_WRAP_T,n.CLAMP_TO_EDGE)}}else if(le.length>0){if(se&&oe){let ie=Oe(le[0]);t.texStorage2D(n.TEXTURE_2D,He,K,ie.width,ie.height)}for(let ie=0,Ae=le.length;ie<Ae;ie++)W=le[ie],se?Te&&t.texSubImage2D(n.TEXTURE_2D,ie,0,0,ae,P,W):t.texImage2D(n.TEXTURE_2D,ie,K,ae,P,W);x.generateMipmaps=!1}else if(se){if(oe){let ie=Oe($);t.texStorage2D(n.TEXTURE_2D,He,K,ie.width,ie.height)}Te&&t.texSubImage2D(n.TEXTURE_2D,0,0,0,ae,P,$)}else t.texImage2D(n.TEXTURE_2D,0,K,ae,P,$);w(x)&&x.mipmapsAutoUpdate===!0&&b(te),he.__version=re.version,x.onUpdate&&x.onUpdate(x)}T.__version=x.version}function pn(T,x,F){if(x.image.length!==6)return;let te=at(T,x),j=x.source;t.bindTexture(n.TEXTURE_CUBE_MAP,T.__webglTexture,n.TEXTURE0+F);let re=i.get(j);if(j.version!==re.__version||te===!0){t.activeTexture(n.TEXTURE0+F);let he=Ze.getPrimaries(Ze.workingColorSpace),Y=x.colorSpace===Fi?null:Ze.getPrimaries(x.colorSpace),$=x.colorSpace===Fi||he===Y?n.NONE:n.BROWSER_DEFAULT_WEBGL;t.pixelStorei(n.UNPACK_FLIP_Y_WEBGL,x.flipY),t.pixelStorei(n.UNPACK_PREMULTIPLY_ALPHA_WEBGL,x.premultiplyAlpha),t.pixelStorei(n.UNPACK_ALIGNMENT,x.unpackAlignment),t.pixelStorei(n.UNPACK_COLORSPACE_CONVERSION_WEBGL,$);let ae=x.isCompressedTexture||x.image[0].isCompressedTexture,P=x.image[0]&&x.image[0].isDataTexture,K=[];for(let pe=0;pe<6;pe++)!ae&&!P?K[pe]=M(x.image[pe],!0,s.maxCubemapSize):K[pe]=P?x.image[pe].image:x.image[pe],K[pe]=Ie(x,K[pe]);let W=K[0],le=r.convert(x.format,x.colorSpace),se=r.convert(x.type),oe=R(x.internalFormat,le,se,x.normalized,x.colorSpace),Te=x.isVideoTexture!==!0,He=re.__version===void 0||te===!0,ie=j.dataReady,Ae=E(x,W);rt(n.TEXTURE_CUBE_MAP,x);let Ve;if(x.isDepthTexture){if(oe=_(x.format===Oi,x.type),He)if(Te)t.texStorage2D(n.TEXTURE_CUBE_MAP,1,oe,W.width,W.height);else for(let pe=0;pe<6;pe++)t.texImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,0,oe,W.width,W.height,0,le,se,null)}else if(ae){Te&&He&&t.texStorage2D(n.TEXTURE_CUBE_MAP,Ae,oe,W.width,W.height);for(let pe=0;pe<6;pe++){Ve=K[pe].mipmaps;for(let ot=0;ot<Ve.length;ot++){let Ut=Ve[ot];x.format!==ni?le!==null?Te?ie&&t.compressedTexSubImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,ot,0,0,Ut.width,Ut.height,le,Ut.data):t.compressedTexImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,ot,oe,Ut.width,Ut.height,0,Ut.data):Ce("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Te?ie&&t.texSubImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,ot,0,0,Ut.width,Ut.height,le,se,Ut.data):t.texImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,ot,oe,Ut.width,Ut.height,0,le,se,Ut.data)}}}else{if(Ve=x.mipmaps,Te&&He){Ve.length>0&&Ae++;let pe=Oe(K[0]);t.texStorage2D(n.TEXTURE_CUBE_MAP,Ae,oe,pe.width,pe.height)}for(let pe=0;pe<6;pe++)if(P){Te?ie&&t.texSubImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,0,0,0,K[pe].width,K[pe].height,le,se,K[pe].data):t.texImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,0,oe,K[pe].width,K[pe].height,0,le,se,K[pe].data);for(let ot=0;ot<Ve.length;ot++){let ki=Ve[ot].image[pe].image;Te?ie&&t.texSubImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,ot+1,0,0,ki.width,ki.height,le,se,ki.data):t.texImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,ot+1,oe,ki.width,ki.height,0,le,se,ki.data)}}else{Te?ie&&t.texSubImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,0,0,0,le,se,K[pe]):t.texImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,0,oe,le,se,K[pe]);for(let ot=0;ot<Ve.length;ot++){let Ut=Ve[ot];Te?ie&&t.texSubImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,ot+1,0,0,le,se,Ut.image[pe]):t.texImage2D(n.TEXTURE_CUBE_MAP_POSITIVE_X+pe,ot+1,oe,le,se,Ut.image[pe])}}}w(x)&&x.mipmapsAutoUpdate===!0&&b(n.TEXTURE_CUBE_MAP),re.__version=j.version,x.onUpdate&&x.onUpdate(x)}T.__version=x.version}function pt(T,x,F,te,j,re){let he=r.convert(F.format,F.colorSpace),Y=r.convert(F.type),$=R(F.internalFormat,he,Y,F.normalized,F.colorSpace),ae=i.get(x),P=i.get(F);if(P.__renderTarget=x,!ae.__hasExternalTextures){let K=Math.max(1,x.width>>re),W=Math.max(1,x.height>>re);j===n.TEXTURE_3D||j===n.TEXTURE_2D_ARRAY?t.texImage3D(j,re,$,K,W,x.depth,0,he,Y,null):t.texImage2D(j,re,$,K,W,0,he,Y,null)}t.bindFramebuffer(n.FRAMEBUFFER,T),fe(x)?a.framebufferTexture2DMultisampleEXT(n.FRAMEBUFFER,te,j,P.__webglTexture,0,dt(x)):(j===n.TEXTURE_2D||j>=n.TEXTURE_CUBE_MAP_POSITIVE_X&&j<=n.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&n.framebufferTexture2D(n.FRAMEBUFFER,te,j,P.__webglTexture,re),t.bindFramebuffer(n.FRAMEBUFFER,null)}function si(T,x,F){if(n.bindRenderbuffer(n.RENDERBUFFER,T),x.depthBuffer){let te=x.depthTexture,j=te&&te.isDepthTexture?te.type:null,re=_(x.stencilBuffer,j),he=x.stencilBuffer?n.DEPTH_STENCIL_ATTACHMENT:n.DEPTH_ATTACHMENT;fe(x)?a.renderbufferStorageMultisampleEXT(n.RENDERBUFFER,dt(x),re,x.width,x.height):F?n.renderbufferStorageMultisample(n.RENDERBUFFER,dt(x),re,x.width,x.height):n.renderbufferStorage(n.RENDERBUFFER,re,x.width,x.height),n.framebufferRenderbuffer(n.FRAMEBUFFER,he,n.RENDERBUFFER,T)}else{let te=x.textures;for(let j=0;j<te.length;j++){let re=te[j],he=r.convert(re.format,re.colorSpace),Y=r.convert(re.type),$=R(re.internalFormat,he,Y,re.normalized,re.colorSpace);fe(x)?a.renderbufferStorageMultisampleEXT(n.RENDERBUFFER,dt(x),$,x.width,x.height):F?n.renderbufferStorageMultisample(n.RENDERBUFFER,dt(x),$,x.width,x.height):n.renderbufferStorage(n.RENDERBUFFER,$,x.width,x.height)}}n.bindRenderbuffer(n.RENDERBUFFER,null)}function Nt(T,x,F){let te=x.isWebGLCubeRenderTarget===!0;if(t.bindFramebuffer(n.FRAMEBUFFER,T),!(x.depthTexture&&x.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let j=i.get(x.depthTexture);j.__renderTarget=x;let re=te?x.depthTexture.image[0]:x.depthTexture.image;(!j.__webglTexture||re.width!==x.width||re.height!==x.height)&&(re.width=x.width,re.height=x.height,x.depthTexture.needsUpdate=!0),te?ge(x.depthTexture,0):me(x.depthTexture,0);let he=j.__webglTexture,Y=dt(x),$=te?n.TEXTURE_CUBE_MAP_POSITIVE_X+F:n.TEXTURE_2D,ae=x.depthTexture.format===Oi?n.DEPTH_STENCIL_ATTACHMENT:n.DEPTH_ATTACHMENT;if(x.depthTexture.format===Ii)fe(x)?a.framebufferTexture2DMultisampleEXT(n.FRAMEBUFFER,ae,$,he,0,Y):n.framebufferTexture2D(n.FRAMEBUFFER,ae,$,he,0);else if(x.depthTexture.format===Oi)fe(x)?a.framebufferTexture2DMultisampleEXT(n.FRAMEBUFFER,ae,$,he,0,Y):n.framebufferTexture2D(n.FRAMEBUFFER,ae,$,he,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function Dn(T){let x=i.get(T),F=T.isWebGLCubeRenderTarget===!0;if(x.__boundDepthTexture!==T.depthTexture){let te=T.depthTexture;if(x.__depthDisposeCallback&&x.__depthDisposeCallback(),te){let j=()=>{delete x.__boundDepthTexture,delete x.__depthDisposeCallback,te.removeEventListener("dispose",j)};te.addEventListener("dispose",j),x.__depthDisposeCallback=j}x.__boundDepthTexture=te}if(T.depthTexture&&!x.__autoAllocateDepthBuffer)if(F)for(let te=0;te<6;te++)Nt(x.__webglFramebuffer[te],T,te);else T.texture.mipmaps.length>0?Nt(x.__webglFramebuffer[0],T,0):Nt(x.__webglFramebuffer,T,0);else if(F){x.__webglDepthbuffer=[];for(let te=0;te<6;te++)if(t.bindFramebuffer(n.FRAMEBUFFER,x.__webglFramebuffer[te]),x.__webglDepthbuffer[te]===void 0)x.__webglDepthbuffer[te]=n.createRenderbuffer(),si(x.__webglDepthbuffer[te],T,!1);else{let j=T.stencilBuffer?n.DEPTH_STENCIL_ATTACHMENT:n.DEPTH_ATTACHMENT,re=x.__webglDepthbuffer[te];n.bindRenderbuffer(n.RENDERBUFFER,re),n.framebufferRenderbuffer(n.FRAMEBUFFER,j,n.RENDERBUFFER,re)}}else if(T.texture.mipmaps.length>0?t.bindFramebuffer(n.FRAMEBUFFER,x.__webglFramebuffer[0]):t.bindFramebuffer(n.FRAMEBUFFER,x.__webglFramebuffer),x.__webglDepthbuffer===void 0)x.__webglDepthbuffer=n.createRenderbuffer(),si(x.__webglDepthbuffer,T,!1);else{let j=T.stencilBuffer?n.DEPTH_STENCIL_ATTACHMENT:n.DEPTH_ATTACHMENT,re=x.__webglDepthbuffer;n.bindRenderbuffer(n.RENDERBUFFER,re),n.framebufferRenderbuffer(n.FRAMEBUFFER,j,n.RENDERBUFFER,re)}t.bindFramebuffer(n.FRAMEBUFFER,null)}function Nn(T,x,F){let te=i.get(T);x!==void 0&&pt(te.__webglFramebuffer,T,T.texture,n.COLOR_ATTACHMENT0,n.TEXTURE_2D,0),F!==void 0&&Dn(T)}function Un(T){let x=T.texture,F=i.get(T),te=i.get(x);T.addEventListener("dispose",z),k(T);let j=T.textures,re=T.isWebGLCubeRenderTarget===!0,he=j.length>1;if(he||(te.__webglTexture===void 0&&(te.__webglTexture=n.createTexture()),te.__version=x.version,o.memory.textures++),re){F.__webglFramebuffer=[];for(let Y=0;Y<6;Y++)if(x.mipmaps.length>0){F.__webglFramebuffer[Y]=[];for(let $=0;$<x.mipmaps.length;$++)F.__webglFramebuffer[Y][$]=n.createFramebuffer()}else F.__webglFramebuffer[Y]=n.createFramebuffer()}else{if(x.mipmaps.length>0){F.__webglFramebuffer=[];for(let Y=0;Y<x.mipmaps.length;Y++)F.__webglFramebuffer[Y]=n.createFramebuffer()}else F.__webglFramebuffer=n.createFramebuffer();if(he)for(let Y=0,$=j.length;Y<$;Y++){let ae=i.get(j[Y]);ae.__webglTexture===void 0&&(ae.__webglTexture=n.createTexture(),o.memory.textures++)}if(T.samples>0&&fe(T)===!1){F.__webglMultisampledFramebuffer=n.createFramebuffer(),F.__webglColorRenderbuffer=[],t.bindFramebuffer(n.FRAMEBUFFER,F.__webglMultisampledFramebuffer);for(let Y=0;Y<j.length;Y++){let $=j[Y];F.__webglColorRenderbuffer[Y]=n.createRenderbuffer(),n.bindRenderbuffer(n.RENDERBUFFER,F.__webglColorRenderbuffer[Y]);let ae=r.convert($.format,$.colorSpace),P=r.convert($.type),K=R($.internalFormat,ae,P,$.normalized,$.colorSpace,T.isXRRenderTarget===!0),W=dt(T);n.renderbufferStorageMultisample(n.RENDERBUFFER,W,K,T.width,T.height),n.framebufferRenderbuffer(n.FRAMEBUFFER,n.COLOR_ATTACHMENT0+Y,n.RENDERBUFFER,F.__webglColorRenderbuffer[Y])}n.bindRenderbuffer(n.RENDERBUFFER,null),T.depthBuffer&&(F.__webglDepthRenderbuffer=n.createRenderbuffer(),si(F.__webglDepthRenderbuffer,T,!0)),t.bindFramebuffer(n.FRAMEBUFFER,null)}}if(re){t.bindTexture(n.TEXTURE_CUBE_MAP,te.__webglTexture),rt(n.TEXTURE_CUBE_MAP,x);for(let Y=0;Y<6;Y++)if(x.mipmaps.length>0)for(let $=0;$<x.mipmaps.length;$++)pt(F.__webglFramebuffer[Y][$],T,x,n.COLOR_ATTACHMENT0,n.TEXTURE_CUBE_MAP_POSITIVE_X+Y,$);else pt(F.__webglFramebuffer[Y],T,x,n.COLOR_ATTACHMENT0,n.TEXTURE_CUBE_MAP_POSITIVE_X+Y,0);w(x)?b(n.TEXTURE_CUBE_MAP):x.mipmaps.length>0&&n.texParameteri(n.TEXTURE_CUBE_MAP,n.TEXTURE_MAX_LEVEL,x.mipmaps.length-1),t.unbindTexture()}else if(he){for(let Y=0,$=j.length;Y<$;Y++){let ae=j[Y],P=i.get(ae),K=n.TEXTURE_2D;(T.isWebGL3DRenderTarget||T.isWebGLArrayRenderTarget)&&(K=T.isWebGL3DRenderTarget?n.TEXTURE_3D:n.TEXTURE_2D_ARRAY),t.bindTexture(K,P.__webglTexture),rt(K,ae),pt(F.__webglFramebuffer,T,ae,n.COLOR_ATTACHMENT0+Y,K,0),w(ae)&&b(K)}t.unbindTexture()}else{let Y=n.TEXTURE_2D;if((T.isWebGL3DRenderTarget||T.isWebGLArrayRenderTarget)&&(Y=T.isWebGL3DRenderTarget?n.TEXTURE_3D:n.TEXTURE_2D_ARRAY),t.bindTexture(Y,te.__webglTexture),rt(Y,x),x.mipmaps.length>0)for(let $=0;$<x.mipmaps.length;$++)pt(F.__webglFramebuffer[$],T,x,n.COLOR_ATTACHMENT0,Y,$);else pt(F.__webglFramebuffer,T,x,n.COLOR_ATTACHMENT0,Y,0);w(x)?b(Y):x.mipmaps.length>0&&n.texParameteri(Y,n.TEXTURE_MAX_LEVEL,x.mipmaps.length-1),t.unbindTexture()}T.depthBuffer&&Dn(T)}function N(T){let x=T.textures;for(let F=0,te=x.length;F<te;F++){let j=x[F];if(w(j)&&j.mipmapsAutoUpdate===!0){let re=C(T),he=i.get(j).__webglTexture;t.bindTexture(re,he),b(re),t.unbindTexture()}}}let On=[];function ut(T){if(T.samples>0){if(fe(T)===!1){let x=T.textures,F=T.width,te=T.height,j=n.COLOR_BUFFER_BIT,re=T.stencilBuffer?n.DEPTH_STENCIL_ATTACHMENT:n.DEPTH_ATTACHMENT,he=i.get(T),Y=x.length>1;if(Y)for(let ae=0;ae<x.length;ae++)t.bindFramebuffer(n.FRAMEBUFFER,he.__webglMultisampledFramebuffer),n.framebufferRenderbuffer(n.FRAMEBUFFER,n.COLOR_ATTACHMENT0+ae,n.RENDERBUFFER,null),t.bindFramebuffer(n.FRAMEBUFFER,he.__webglFramebuffer),n.framebufferTexture2D(n.DRAW_FRAMEBUFFER,n.COLOR_ATTACHMENT0+ae,n.TEXTURE_2D,null,0);t.bindFramebuffer(n.READ_FRAMEBUFFER,he.__webglMultisampledFramebuffer),T.texture.mipmaps.length>0?t.bindFramebuffer(n.DRAW_FRAMEBUFFER,he.__webglFramebuffer[0]):t.bindFramebuffer(n.DRAW_FRAMEBUFFER,he.__webglFramebuffer);for(let ae=0;ae<x.length;ae++){if(T.resolveDepthBuffer&&(T.depthBuffer&&(j|=n.DEPTH_BUFFER_BIT),T.stencilBuffer&&T.resolveStencilBuffer&&(j|=n.STENCIL_BUFFER_BIT)),Y){n.framebufferRenderbuffer(n.READ_FRAMEBUFFER,n.COLOR_ATTACHMENT0,n.RENDERBUFFER,he.__webglColorRenderbuffer[ae]);let P=i.get(x[ae]).__webglTexture;n.framebufferTexture2D(n.DRAW_FRAMEBUFFER,n.COLOR_ATTACHMENT0,n.TEXTURE_2D,P,0)}n.blitFramebuffer(0,0,F,te,0,0,F,te,j,n.NEAREST),l===!0&&(On.length=0,On.push(n.COLOR_ATTACHMENT0+ae),T.depthBuffer&&T.storeMultisampledDepthBuffer===!1&&On.push(re),n.invalidateFramebuffer(n.READ_FRAMEBUFFER,On))}if(t.bindFramebuffer(n.READ_FRAMEBUFFER,null),t.bindFramebuffer(n.DRAW_FRAMEBUFFER,null),Y)for(let ae=0;ae<x.length;ae++){t.bindFramebuffer(n.FRAMEBUFFER,he.__webglMultisampledFramebuffer),n.framebufferRenderbuffer(n.FRAMEBUFFER,n.COLOR_ATTACHMENT0+ae,n.RENDERBUFFER,he.__webglColorRenderbuffer[ae]);let P=i.get(x[ae]).__webglTexture;t.bindFramebuffer(n.FRAMEBUFFER,he.__webglFramebuffer),n.framebufferTexture2D(n.DRAW_FRAMEBUFFER,n.COLOR_ATTACHMENT0+ae,n.TEXTURE_2D,P,0)}t.bindFramebuffer(n.DRAW_FRAMEBUFFER,he.__webglMultisampledFramebuffer)}else if(T.depthBuffer&&T.storeMultisampledDepthBuffer===!1&&l){let x=T.stencilBuffer?n.DEPTH_STENCIL_ATTACHMENT:n.DEPTH_ATTACHMENT;n.invalidateFramebuffer(n.DRAW_FRAMEBUFFER,[x])}}}function dt(T){return Math.min(s.maxSamples,T.samples)}function fe(T){let x=i.get(T);return T.samples>0&&e.has("WEBGL_multisampled_render_to_texture")===!0&&x.__useRenderToTexture!==!1}function At(T){let x=o.render.frame;h.get(T)!==x&&(h.set(T,x),T.update())}function Ie(T,x){let F=T.colorSpace,te=T.format,j=T.type;return T.isCompressedTexture===!0||T.isVideoTexture===!0||F!==Ao&&F!==Fi&&(Ze.getTransfer(F)===st?(te!==ni||j!==yn)&&Ce("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):De("WebGLTextures: Unsupported texture color space:",F)),x}function Oe(T){return typeof HTMLImageElement<"u"&&T instanceof HTMLImageElement?(c.width=T.naturalWidth||T.width,c.height=T.naturalHeight||T.height):typeof VideoFrame<"u"&&T instanceof VideoFrame?(c.width=T.displayWidth,c.height=T.displayHeight):(c.width=T.width,c.height=T.height),c}this.allocateTextureUnit=Fe,this.resetTextureUnits=Q,this.getTextureUnits=ee,this.setTextureUnits=Me,this.setTexture2D=me,this.setTexture2DArray=ye,this.setTexture3D=Pe,this.setTextureCube=ge,this.rebindTextures=Nn,this.setupRenderTarget=Un,this.updateRenderTargetMipmap=N,this.updateMultisampleRenderTarget=ut,this.setupDepthRenderbuffer=Dn,this.setupFrameBufferTexture=pt,this.useMultisampledRTT=fe,this.dispose=q}function Dw(n,e){function t(i,s=Fi){let r,o=Ze.getTransfer(s);if(i===yn)return n.UNSIGNED_BYTE;if(i===sc)return n.UNSIGNED_SHORT_4_4_4_4;if(i===rc)return n.UNSIGNED_SHORT_5_5_5_1;if(i===dd)return n.UNSIGNED_INT_5_9_9_9_REV;if(i===fd)return n.UNSIGNED_INT_10F_11F_11F_REV;if(i===hd)return n.BYTE;if(i===ud)return n.SHORT;if(i===Ur)return n.UNSIGNED_SHORT;if(i===ic)return n.INT;if(i===Qn)return n.UNSIGNED_INT;if(i===ei)return n.FLOAT;if(i===ti)return n.HALF_FLOAT;if(i===pd)return n.ALPHA;if(i===md)return n.RGB;if(i===ni)return n.RGBA;if(i===Ii)return n.DEPTH_COMPONENT;if(i===Oi)return n.DEPTH_STENCIL;if(i===gd)return n.RED;if(i===oc)return n.RED_INTEGER;if(i===cs)return n.RG;if(i===ac)return n.RG_INTEGER;if(i===lc)return n.RGBA_INTEGER;if(i===na||i===ia||i===sa||i===ra)if(o===st)if(r=e.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(i===na)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(i===ia)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(i===sa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(i===ra)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=e.get("WEBGL_compressed_texture_s3tc"),r!==null){if(i===na)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(i===ia)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(i===sa)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(i===ra)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(i===cc||i===hc||i===uc||i===dc)if(r=e.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(i===cc)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(i===hc)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(i===uc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(i===dc)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(i===fc||i===pc||i===mc||i===gc||i===_c||i===oa||i===vc)if(r=e.get("WEBGL_compressed_texture_etc"),r!==null){if(i===fc||i===pc)return o===st?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(i===mc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(i===gc)return r.COMPRESSED_R11_EAC;if(i===_c)return r.COMPRESSED_SIGNED_R11_EAC;if(i===oa)return r.COMPRESSED_RG11_EAC;if(i===vc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(i===yc||i===xc||i===Sc||i===bc||i===Mc||i===wc||i===Ec||i===Tc||i===Ac||i===Rc||i===Cc||i===Pc||i===Ic||i===Lc)if(r=e.get("WEBGL_compressed_texture_astc"),r!==null){if(i===yc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(i===xc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(i===Sc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(i===bc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(i===Mc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(i===wc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(i===Ec)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(i===Tc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(i===Ac)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(i===Rc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(i===Cc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(i===Pc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(i===Ic)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(i===Lc)return o===st?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(i===Dc||i===Nc||i===Uc)if(r=e.get("EXT_texture_compression_bptc"),r!==null){if(i===Dc)return o===st?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(i===Nc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(i===Uc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(i===Oc||i===Fc||i===aa||i===Bc)if(r=e.get("EXT_texture_compression_rgtc"),r!==null){if(i===Oc)return r.COMPRESSED_RED_RGTC1_EXT;if(i===Fc)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(i===aa)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(i===Bc)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return i===Bs?n.UNSIGNED_INT_24_8:n[i]!==void 0?n[i]:null}return{convert:t}}var Nw=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,Uw=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,Bd=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(e,t){if(this.texture===null){let i=new Bo(e.texture);(e.depthNear!==t.depthNear||e.depthFar!==t.depthFar)&&(this.depthNear=e.depthNear,this.depthFar=e.depthFar),this.texture=i}}getMesh(e){if(this.texture!==null&&this.mesh===null){let t=e.cameras[0].viewport,i=new vn({vertexShader:Nw,fragmentShader:Uw,uniforms:{depthColor:{value:this.texture},depthWidth:{value:t.z},depthHeight:{value:t.w}}});this.mesh=new yt(new ns(20,20),i)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},kd=class extends Kn{constructor(e,t){super();let i=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,h=null,f=null,d=null,u=null,m=null,y=typeof XRWebGLBinding<"u",p=new Bd,g={},M=t.getContextAttributes(),w=null,b=null,C=[],R=[],_=new Ee,E=null,k=null,D=new cn;D.viewport=new tt;let U=new cn;U.viewport=new tt;let z=[D,U],H=new jl,L=null,q=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(Z){let me=C[Z];return me===void 0&&(me=new Er,C[Z]=me),me.getTargetRaySpace()},this.getControllerGrip=function(Z){let me=C[Z];return me===void 0&&(me=new Er,C[Z]=me),me.getGripSpace()},this.getHand=function(Z){let me=C[Z];return me===void 0&&(me=new Er,C[Z]=me),me.getHandSpace()};function J(Z){let me=R.indexOf(Z.inputSource);if(me===-1)return;let ye=C[me];ye!==void 0&&(ye.update(Z.inputSource,Z.frame,c||o),ye.dispatchEvent({type:Z.type,data:Z.inputSource}))}function G(){s.removeEventListener("select",J),s.removeEventListener("selectstart",J),s.removeEventListener("selectend",J),s.removeEventListener("squeeze",J),s.removeEventListener("squeezestart",J),s.removeEventListener("squeezeend",J),s.removeEventListener("end",G),s.removeEventListener("inputsourceschange",ne);for(let Z=0;Z<C.length;Z++){let me=R[Z];me!==null&&(R[Z]=null,C[Z].disconnect(me))}L=null,q=null,p.reset();for(let Z in g)delete g[Z];if(e.setRenderTarget(w),u=null,d=null,f=null,s=null,b=null,Fe.stop(),i.isPresenting=!1,e.setPixelRatio(E),e.setSize(_.width,_.height,!1),k!==null){let Z=k.camera;Z.fov=k.fov,Z.zoom=k.zoom,Z.updateProjectionMatrix(),k=null}i.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(Z){r=Z,i.isPresenting===!0&&Ce("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(Z){a=Z,i.isPresenting===!0&&Ce("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function(Z){c=Z},this.getBaseLayer=function(){return d!==null?d:u},this.getBinding=function(){return f===null&&y&&(f=new XRWebGLBinding(s,t)),f},this.getFrame=function(){return m},this.getSession=function(){return s},this.setSession=async function(Z){if(s=Z,s!==null){if(w=e.getRenderTarget(),s.addEventListener("select",J),s.addEventListener("selectstart",J),s.addEventListener("selectend",J),s.addEventListener("squeeze",J),s.addEventListener("squeezestart",J),s.addEventListener("squeezeend",J),s.addEventListener("end",G),s.addEventListener("inputsourceschange",ne),M.xrCompatible!==!0&&await t.makeXRCompatible(),E=e.getPixelRatio(),e.getSize(_),y&&"createProjectionLayer"in XRWebGLBinding.prototype){let ye=null,Pe=null,ge=null;M.depth&&(ge=M.stencil?t.DEPTH24_STENCIL8:t.DEPTH_COMPONENT24,ye=M.stencil?Oi:Ii,Pe=M.stencil?Bs:Qn);let ze={colorFormat:t.RGBA8,depthFormat:ge,scaleFactor:r};f=this.getBinding(),d=f.createProjectionLayer(ze),s.updateRenderState({layers:[d]}),e.setPixelRatio(1),e.setSize(d.textureWidth,d.textureHeight,!1),b=new un(d.textureWidth,d.textureHeight,{format:ni,type:yn,depthTexture:new Di(d.textureWidth,d.textureHeight,Pe,void 0,void 0,void 0,void 0,void 0,void 0,ye),stencilBuffer:M.stencil,colorSpace:e.outputColorSpace,samples:M.antialias?4:0,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}else{let ye={antialias:M.antialias,alpha:!0,depth:M.depth,stencil:M.stencil,framebufferScaleFactor:r};u=new XRWebGLLayer(s,t,ye),s.updateRenderState({baseLayer:u}),e.setPixelRatio(1),e.setSize(u.framebufferWidth,u.framebufferHeight,!1),b=new un(u.framebufferWidth,u.framebufferHeight,{format:ni,type:yn,colorSpace:e.outputColorSpace,stencilBuffer:M.stencil,resolveDepthBuffer:u.ignoreDepthValues===!1,resolveStencilBuffer:u.ignoreDepthValues===!1,storeMultisampledDepthBuffer:u.ignoreDepthValues===!1,storeMultisampledStencilBuffer:u.ignoreDepthValues===!1})}b.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),Fe.setContext(s),Fe.start(),i.isPresenting=!0,i.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return p.getDepthTexture()};function ne(Z){for(let me=0;me<Z.removed.length;me++){let ye=Z.removed[me],Pe=R.indexOf(ye);Pe>=0&&(R[Pe]=null,C[Pe].disconnect(ye))}for(let me=0;me<Z.added.length;me++){let ye=Z.added[me],Pe=R.indexOf(ye);if(Pe===-1){for(let ze=0;ze<C.length;ze++)if(ze>=R.length){R.push(ye),Pe=ze;break}else if(R[ze]===null){R[ze]=ye,Pe=ze;break}if(Pe===-1)break}let ge=C[Pe];ge&&ge.connect(ye)}}function X(Z,me){me===null?Z.matrixWorld.copy(Z.matrix):Z.matrixWorld.multiplyMatrices(me.matrixWorld,Z.matrix),Z.matrixWorldInverse.copy(Z.matrixWorld).invert()}this.updateCamera=function(Z){if(s===null)return;let me=Z.near,ye=Z.far;p.texture!==null&&(p.depthNear>0&&(me=p.depthNear),p.depthFar>0&&(ye=p.depthFar)),H.near=U.near=D.near=me,H.far=U.far=D.far=ye,(L!==H.near||q!==H.far)&&(s.updateRenderState({depthNear:H.near,depthFar:H.far}),L=H.near,q=H.far),H.layers.mask=Z.layers.mask|6,D.layers.mask=H.layers.mask&-5,U.layers.mask=H.layers.mask&-3;let Pe=Z.parent,ge=H.cameras;X(H,Pe);for(let ze=0;ze<ge.length;ze++)X(ge[ze],Pe);H.projectionMatrix.copy(D.projectionMatrix),H.projectionMatrixInverse.copy(D.projectionMatrixInverse),k===null&&Z.isPerspectiveCamera&&(k={camera:Z,fov:Z.fov,zoom:Z.zoom}),Q(Z,H,Pe)};function Q(Z,me,ye){ye===null?Z.matrix.copy(me.matrixWorld):(Z.matrix.copy(ye.matrixWorld),Z.matrix.invert(),Z.matrix.multiply(me.matrixWorld)),Z.matrix.decompose(Z.position,Z.quaternion,Z.scale),Z.updateMatrixWorld(!0),Z.projectionMatrix.copy(me.projectionMatrix),Z.projectionMatrixInverse.copy(me.projectionMatrixInverse),Z.isPerspectiveCamera&&(Z.fov=br*2*Math.atan(1/Z.projectionMatrix.elements[5]),Z.zoom=1)}this.getCamera=function(){return H},this.getFoveation=function(){if(!(d===null&&u===null))return l},this.setFoveation=function(Z){l=Z,d!==null&&(d.fixedFoveation=Z),u!==null&&u.fixedFoveation!==void 0&&(u.fixedFoveation=Z)},this.hasDepthSensing=function(){return p.texture!==null},this.getDepthSensingMesh=function(){return p.getMesh(H)},this.getCameraTexture=function(Z){return g[Z]};let ee=null;function Me(Z,me){if(h=me.getViewerPose(c||o),m=me,h!==null){let ye=h.views;u!==null&&(e.setRenderTargetFramebuffer(b,u.framebuffer),e.setRenderTarget(b));let Pe=!1;ye.length!==H.cameras.length&&(H.cameras.length=0,Pe=!0);for(let Le=0;Le<ye.length;Le++){let rt=ye[Le],at=null;if(u!==null)at=u.getViewport(rt);else{let Vt=f.getViewSubImage(d,rt);at=Vt.viewport,Le===0&&(e.setRenderTargetTextures(b,Vt.colorTexture,Vt.depthStencilTexture),e.setRenderTarget(b))}let qe=z[Le];qe===void 0&&(qe=new cn,qe.layers.enable(Le),qe.viewport=new tt,z[Le]=qe),qe.matrix.fromArray(rt.transform.matrix),qe.matrix.decompose(qe.position,qe.quaternion,qe.scale),qe.projectionMatrix.fromArray(rt.projectionMatrix),qe.projectionMatrixInverse.copy(qe.projectionMatrix).invert(),qe.viewport.set(at.x,at.y,at.width,at.height),Le===0&&(H.matrix.copy(qe.matrix),H.matrix.decompose(H.position,H.quaternion,H.scale)),Pe===!0&&H.cameras.push(qe)}let ge=s.enabledFeatures;if(ge&&ge.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&y){f=i.getBinding();let Le=f.getDepthInformation(ye[0]);Le&&Le.isValid&&Le.texture&&p.init(Le,s.renderState)}if(ge&&ge.includes("camera-access")&&y){e.state.unbindTexture(),f=i.getBinding();for(let Le=0;Le<ye.length;Le++){let rt=ye[Le].camera;if(rt){let at=g[rt];at||(at=new Bo,g[rt]=at);let qe=f.getCameraImage(rt);at.sourceTexture=qe}}}}for(let ye=0;ye<C.length;ye++){let Pe=R[ye],ge=C[ye];Pe!==null&&ge!==void 0&&ge.update(Pe,me,c||o)}ee&&ee(Z,me),me.detectedPlanes&&i.dispatchEvent({type:"planesdetected",data:me}),m=null}let Fe=new zg;Fe.setAnimationLoop(Me),this.setAnimationLoop=function(Z){ee=Z},this.dispose=function(){}}},Ow=new Ke,Kg=new Ue;Kg.set(-1,0,0,0,1,0,0,0,1);function Fw(n,e){function t(p,g){p.matrixAutoUpdate===!0&&p.updateMatrix(),g.value.copy(p.matrix)}function i(p,g){g.color.getRGB(p.fogColor.value,Td(n)),g.isFog?(p.fogNear.value=g.near,p.fogFar.value=g.far):g.isFogExp2&&(p.fogDensity.value=g.density)}function s(p,g,M,w,b){g.isNodeMaterial?g.uniformsNeedUpdate=!1:g.isMeshBasicMaterial?r(p,g):g.isMeshLambertMaterial?(r(p,g),g.envMap&&(p.envMapIntensity.value=g.envMapIntensity)):g.isMeshToonMaterial?(r(p,g),f(p,g)):g.isMeshPhongMaterial?(r(p,g),h(p,g),g.envMap&&(p.envMapIntensity.value=g.envMapIntensity)):g.isMeshStandardMaterial?(r(p,g),d(p,g),g.isMeshPhysicalMaterial&&u(p,g,b)):g.isMeshMatcapMaterial?(r(p,g),m(p,g)):g.isMeshDepthMaterial?r(p,g):g.isMeshDistanceMaterial?(r(p,g),y(p,g)):g.isMeshNormalMaterial?r(p,g):g.isLineBasicMaterial?(o(p,g),g.isLineDashedMaterial&&a(p,g)):g.isPointsMaterial?l(p,g,M,w):g.isSpriteMaterial?c(p,g):g.isShadowMaterial?(p.color.value.copy(g.color),p.opacity.value=g.opacity):g.isShaderMaterial&&(g.uniformsNeedUpdate=!1)}function r(p,g){p.opacity.value=g.opacity,g.color&&p.diffuse.value.copy(g.color),g.emissive&&p.emissive.value.copy(g.emissive).multiplyScalar(g.emissiveIntensity),g.map&&(p.map.value=g.map,t(g.map,p.mapTransform)),g.alphaMap&&(p.alphaMap.value=g.alphaMap,t(g.alphaMap,p.alphaMapTransform)),g.bumpMap&&(p.bumpMap.value=g.bumpMap,t(g.bumpMap,p.bumpMapTransform),p.bumpScale.value=g.bumpScale,g.side===dn&&(p.bumpScale.value*=-1)),g.normalMap&&(p.normalMap.value=g.normalMap,t(g.normalMap,p.normalMapTransform),p.normalScale.value.copy(g.normalScale),g.side===dn&&p.normalScale.value.negate()),g.displacementMap&&(p.displacementMap.value=g.displacementMap,t(g.displacementMap,p.displacementMapTransform),p.displacementScale.value=g.displacementScale,p.displacementBias.value=g.displacementBias),g.emissiveMap&&(p.emissiveMap.value=g.emissiveMap,t(g.emissiveMap,p.emissiveMapTransform)),g.specularMap&&(p.specularMap.value=g.specularMap,t(g.specularMap,p.specularMapTransform)),g.alphaTest>0&&(p.alphaTest.value=g.alphaTest);let M=e.get(g),w=M.envMap,b=M.envMapRotation;w&&(p.envMap.value=w,p.envMapRotation.value.setFromMatrix4(Ow.makeRotationFromEuler(b)).transpose(),w.isCubeTexture&&w.isRenderTargetTexture===!1&&p.envMapRotation.value.premultiply(Kg),p.reflectivity.value=g.reflectivity,p.ior.value=g.ior,p.refractionRatio.value=g.refractionRatio),g.lightMap&&(p.lightMap.value=g.lightMap,p.lightMapIntensity.value=g.lightMapIntensity,t(g.lightMap,p.lightMapTransform)),g.aoMap&&(p.aoMap.value=g.aoMap,p.aoMapIntensity.value=g.aoMapIntensity,t(g.aoMap,p.aoMapTransform))}function o(p,g){p.diffuse.value.copy(g.color),p.opacity.value=g.opacity,g.map&&(p.map.value=g.map,t(g.map,p.mapTransform))}function a(p,g){p.dashSize.value=g.dashSize,p.totalSize.value=g.dashSize+g.gapSize,p.scale.value=g.scale}function l(p,g,M,w){p.diffuse.value.copy(g.color),p.opacity.value=g.opacity,p.size.value=g.size*M,p.scale.value=w*.5,g.map&&(p.map.value=g.map,t(g.map,p.uvTransform)),g.alphaMap&&(p.alphaMap.value=g.alphaMap,t(g.alphaMap,p.alphaMapTransform)),g.alphaTest>0&&(p.alphaTest.value=g.alphaTest)}function c(p,g){p.diffuse.value.copy(g.color),p.opacity.value=g.opacity,p.rotation.value=g.rotation,g.map&&(p.map.value=g.map,t(g.map,p.mapTransform)),g.alphaMap&&(p.alphaMap.value=g.alphaMap,t(g.alphaMap,p.alphaMapTransform)),g.alphaTest>0&&(p.alphaTest.value=g.alphaTest)}function h(p,g){p.specular.value.copy(g.specular),p.shininess.value=Math.max(g.shininess,1e-4)}function f(p,g){g.gradientMap&&(p.gradientMap.value=g.gradientMap)}function d(p,g){p.metalness.value=g.metalness,g.metalnessMap&&(p.metalnessMap.value=g.metalnessMap,t(g.metalnessMap,p.metalnessMapTransform)),p.roughness.value=g.roughness,g.roughnessMap&&(p.roughnessMap.value=g.roughnessMap,t(g.roughnessMap,p.roughnessMapTransform)),g.envMap&&(p.envMapIntensity.value=g.envMapIntensity)}function u(p,g,M){p.ior.value=g.ior,g.diffuseRoughness>0&&(p.diffuseRoughness.value=g.diffuseRoughness,g.diffuseRoughnessMap&&(p.diffuseRoughnessMap.value=g.diffuseRoughnessMap,t(g.diffuseRoughnessMap,p.diffuseRoughnessMapTransform))),g.sheen>0&&(p.sheenColor.value.copy(g.sheenColor).multiplyScalar(g.sheen),p.sheenRoughness.value=g.sheenRoughness,g.sheenColorMap&&(p.sheenColorMap.value=g.sheenColorMap,t(g.sheenColorMap,p.sheenColorMapTransform)),g.sheenRoughnessMap&&(p.sheenRoughnessMap.value=g.sheenRoughnessMap,t(g.sheenRoughnessMap,p.sheenRoughnessMapTransform))),g.clearcoat>0&&(p.clearcoat.value=g.clearcoat,p.clearcoatRoughness.value=g.clearcoatRoughness,g.clearcoatMap&&(p.clearcoatMap.value=g.clearcoatMap,t(g.clearcoatMap,p.clearcoatMapTransform)),g.clearcoatRoughnessMap&&(p.clearcoatRoughnessMap.value=g.clearcoatRoughnessMap,t(g.clearcoatRoughnessMap,p.clearcoatRoughnessMapTransform)),g.clearcoatNormalMap&&(p.clearcoatNormalMap.value=g.clearcoatNormalMap,t(g.clearcoatNormalMap,p.clearcoatNormalMapTransform),p.clearcoatNormalScale.value.copy(g.clearcoatNormalScale),g.side===dn&&p.clearcoatNormalScale.value.negate())),g.dispersion>0&&(p.dispersion.value=g.dispersion),g.retroreflectivity>0&&(p.retroreflectivity.value=g.retroreflectivity),g.iridescence>0&&(p.iridescence.value=g.iridescence,p.iridescenceIOR.value=g.iridescenceIOR,p.iridescenceThicknessMinimum.value=g.iridescenceThicknessMinimum,p.iridescenceThicknessMaximum.value=g.iridescenceThicknessMaximum,g.iridescenceMap&&(p.iridescenceMap.value=g.iridescenceMap,t(g.iridescenceMap,p.iridescenceMapTransform)),g.iridescenceThicknessMap&&(p.iridescenceThicknessMap.value=g.iridescenceThicknessMap,t(g.iridescenceThicknessMap,p.iridescenceThicknessMapTransform))),g.transmission>0&&(p.transmission.value=g.transmission,p.transmissionSamplerMap.value=M.texture,p.transmissionSamplerSize.value.set(M.width,M.height),g.transmissionMap&&(p.transmissionMap.value=g.transmissionMap,t(g.transmissionMap,p.transmissionMapTransform)),p.thickness.value=g.thickness,g.thicknessMap&&(p.thicknessMap.value=g.thicknessMap,t(g.thicknessMap,p.thicknessMapTransform)),p.attenuationDistance.value=g.attenuationDistance,p.attenuationColor.value.copy(g.attenuationColor)),g.anisotropy>0&&(p.anisotropyVector.value.set(g.anisotropy*Math.cos(g.anisotropyRotation),g.anisotropy*Math.sin(g.anisotropyRotation)),g.anisotropyMap&&(p.anisotropyMap.value=g.anisotropyMap,t(g.anisotropyMap,p.anisotropyMapTransform))),p.specularIntensity.value=g.specularIntensity,p.specularColor.value.copy(g.specularColor),g.specularColorMap&&(p.specularColorMap.value=g.specularColorMap,t(g.specularColorMap,p.specularColorMapTransform)),g.specularIntensityMap&&(p.specularIntensityMap.value=g.specularIntensityMap,t(g.specularIntensityMap,p.specularIntensityMapTransform))}function m(p,g){g.matcap&&(p.matcap.value=g.matcap)}function y(p,g){let M=e.get(g).light;p.referencePosition.value.setFromMatrixPosition(M.matrixWorld),p.nearDistance.value=M.shadow.camera.near,p.farDistance.value=M.shadow.camera.far}return{refreshFogUniforms:i,refreshMaterialUniforms:s}}function Bw(n,e,t,i){let s={},r={};function o(M,w){let b=w.program;i.uniformBlockBinding(M,b,s[M.id])}function a(M,w){let b=s[M.id];b===void 0&&(m(M),b=l(M),s[M.id]=b,M.addEventListener("dispose",p));let C=w.program;i.updateUBOMapping(M,C);let R=e.render.frame;r[M.id]!==R&&(c(M),r[M.id]=R)}function l(M){let w=n.createBuffer(),b=M.__size,C=M.usage;return n.bindBuffer(n.UNIFORM_BUFFER,w),n.bufferData(n.UNIFORM_BUFFER,b,C),n.bindBuffer(n.UNIFORM_BUFFER,null),w}function c(M){let w=s[M.id],b=M.uniforms,C=M.__cache;n.bindBuffer(n.UNIFORM_BUFFER,w);for(let R=0,_=b.length;R<_;R++){let E=b[R];if(Array.isArray(E))for(let k=0,D=E.length;k<D;k++)h(E[k],R,k,C);else h(E,R,0,C)}n.bindBuffer(n.UNIFORM_BUFFER,null)}function h(M,w,b,C){if(d(M,w,b,C)===!0){let R=M.__offset,_=M.value;if(Array.isArray(_)){let E=0;for(let k=0;k<_.length;k++){let D=_[k],U=y(D,!0);f(D,M.__data,E),E+=U.storage/Float32Array.BYTES_PER_ELEMENT}}else f(_,M.__data,0);n.bufferSubData(n.UNIFORM_BUFFER,R,M.__data)}}function f(M,w,b){typeof M=="number"||typeof M=="boolean"?w[b]=M:M.isMatrix3?(w[b]=M.elements[0],w[b+1]=M.elements[1],w[b+2]=M.elements[2],w[b+3]=0,w[b+4]=M.elements[3],w[b+5]=M.elements[4],w[b+6]=M.elements[5],w[b+7]=0,w[b+8]=M.elements[6],w[b+9]=M.elements[7],w[b+10]=M.elements[8],w[b+11]=0):ArrayBuffer.isView(M)?w.set(M.subarray(0,w.length-b),b):M.toArray(w,b)}function d(M,w,b,C){let R=M.value,_=w+"_"+b;if(Array.isArray(R)){C[_]===void 0&&(C[_]=[]);let E=C[_],k=!1;for(let D=0;D<R.length;D++)u(R[D],E,D)===!0&&(k=!0);return k}return u(R,C,_)}function u(M,w,b){if(w[b]===void 0)return typeof M=="number"||typeof M=="boolean"?w[b]=M:ArrayBuffer.isView(M)?w[b]=M.slice():w[b]=M.clone(),!0;{let C=w[b];if(typeof M=="number"||typeof M=="boolean"){if(C!==M)return w[b]=M,!0}else{if(ArrayBuffer.isView(M))return!0;if(C.equals(M)===!1)return C.copy(M),!0}}return!1}function m(M){let w=M.uniforms,b=0,C=16;for(let _=0,E=w.length;_<E;_++){let k=Array.isArray(w[_])?w[_]:[w[_]];for(let D=0,U=k.length;D<U;D++){let z=k[D],H=Array.isArray(z.value)?z.value:[z.value],L=Array.isArray(w[_])||Array.isArray(z.value),q=b;for(let G=0,ne=H.length;G<ne;G++){let X=H[G],Q=y(X,L),ee=b%C,Me=ee%Q.boundary,Fe=ee+Me;b+=Me,Fe!==0&&C-Fe<Q.storage&&(b+=C-Fe),G===0&&(q=b),b+=Q.storage}let J=z.type==="int"?Int32Array:z.type==="uint"?Uint32Array:Float32Array;z.__data=new J((b-q)/Float32Array.BYTES_PER_ELEMENT),z.__offset=q}}let R=b%C;return R>0&&(b+=C-R),M.__size=b,M.__cache={},this}function y(M,w){let b={boundary:0,storage:0};return typeof M=="number"||typeof M=="boolean"?(b.boundary=4,b.storage=4):M.isVector2?(b.boundary=8,b.storage=8):M.isVector3||M.isColor?(b.boundary=16,b.storage=12):M.isVector4?(b.boundary=16,b.storage=16):M.isMatrix3?(b.boundary=16,b.storage=48):M.isMatrix4?(b.boundary=16,b.storage=64):M.isTexture?Ce("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(M)?(b.boundary=16,b.storage=M.byteLength):Ce("WebGLRenderer: Unsupported uniform value type.",M),w===!0&&(b.boundary=16,b.storage=Math.ceil(b.storage/16)*16),b}function p(M){let w=M.target;w.removeEventListener("dispose",p),n.deleteBuffer(s[w.id]),delete s[w.id],delete r[w.id]}function g(){for(let M in s)n.deleteBuffer(s[M]);s={},r={}}return{bind:o,update:a,dispose:g}}var kw=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),fi=null;function zw(){return fi===null&&(fi=new Ar(kw,16,16,cs,ti),fi.name="DFG_LUT",fi.minFilter=hn,fi.magFilter=hn,fi.wrapS=ci,fi.wrapT=ci,fi.generateMipmaps=!1,fi.needsUpdate=!0),fi}var Hc=class{constructor(e={}){let{canvas:t=lg(),context:i=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:f=!1,reversedDepthBuffer:d=!1,outputBufferType:u=yn}=e;this.isWebGLRenderer=!0;let m;if(i!==null){if(typeof WebGLRenderingContext<"u"&&i instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");m=i.getContextAttributes().alpha}else m=o;let y=u,p=new Set([lc,ac,oc]),g=new Set([yn,Qn,Ur,Bs,sc,rc]),M=new Uint32Array(4),w=new Int32Array(4),b={textures:[],min:[],max:[],resolution:[]},C=null,R=null,_=[],E=[],k=null;this.domElement=t,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=di,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let D=this,U=!1,z=null,H=null,L=null,q=null;this._outputColorSpace=Xt;let J=0,G=0,ne=null,X=-1,Q=null,ee=new tt,Me=new tt,Fe=null,Z=new Re(0),me=0,ye=t.width,Pe=t.height,ge=1,ze=null,St=null,Le=new tt(0,0,ye,Pe),rt=new tt(0,0,ye,Pe),at=!1,qe=new ts,Vt=new Nl,Tt=!1,pn=!1,pt=new Ke,si=new A,Nt=new tt,Dn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Nn=!1;function Un(){return ne===null?ge:1}let N=i;function On(S,I){return t.getContext(S,I)}let ut,dt,fe,At,Ie,Oe,T,x,F,te,j,re,he,Y,$,ae,P,K,W,le,se,oe,Te;try{let S={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:f};if("setAttribute"in t&&t.setAttribute("data-engine",`three.js r${"187"}`),t.addEventListener("webglcontextlost",Ae,!1),t.addEventListener("webglcontextrestored",Ve,!1),t.addEventListener("webglcontextcreationerror",pe,!1),N===null){let I="webgl2";if(N=On(I,S),N===null)throw On(I)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}He()}catch(S){throw t.removeEventListener("webglcontextlost",Ae,!1),t.removeEventListener("webglcontextrestored",Ve,!1),t.removeEventListener("webglcontextcreationerror",pe,!1),De("WebGLRenderer: "+S.message),S}function He(){ut=new Jb(N),ut.init(),se=new Dw(N,ut),dt=new zb(N,ut,e,se),fe=new Iw(N,ut),dt.reversedDepthBuffer&&d&&fe.buffers.depth.setReversed(!0),H=N.createFramebuffer(),L=N.createFramebuffer(),q=N.createFramebuffer(),At=new eM(N),Ie=new _w,Oe=new Lw(N,ut,fe,Ie,dt,se,At),T=new Kb(D),x=new nx(N),oe=new Bb(N,x),F=new jb(N,x,At,oe),te=new nM(N,F,x,oe,At),K=new tM(N,dt,Oe),$=new Vb(Ie),j=new gw(D,T,ut,dt,oe,$),re=new Fw(D,Ie),he=new yw,Y=new Ew(ut),P=new Fb(D,T,fe,te,m,l),ae=new Pw(D,te,dt),Te=new Bw(N,At,dt,fe),W=new kb(N,ut,At),le=new Qb(N,ut,At),At.programs=j.programs,D.capabilities=dt,D.extensions=ut,D.properties=Ie,D.renderLists=he,D.shadowMap=ae,D.state=fe,D.info=At}y!==yn&&(k=new sM(y,t.width,t.height,a,s,r));let ie=new kd(D,N);this.xr=ie,this.getContext=function(){return N},this.getContextAttributes=function(){return N.getContextAttributes()},this.forceContextLoss=function(){let S=ut.get("WEBGL_lose_context");S&&S.loseContext()},this.forceContextRestore=function(){let S=ut.get("WEBGL_lose_context");S&&S.restoreContext()},this.getPixelRatio=function(){return ge},this.setPixelRatio=function(S){S!==void 0&&(ge=S,this.setSize(ye,Pe,!1))},this.getSize=function(S){return S.set(ye,Pe)},this.setSize=function(S,I,V=!0){if(ie.isPresenting){Ce("WebGLRenderer: Can't change size while VR device is presenting.");return}ye=S,Pe=I,t.width=Math.floor(S*ge),t.height=Math.floor(I*ge),V===!0&&(t.style.width=S+"px",t.style.height=I+"px"),k!==null&&k.setSize(t.width,t.height),this.setViewport(0,0,S,I)},this.getDrawingBufferSize=function(S){return S.set(ye*ge,Pe*ge).floor()},this.setDrawingBufferSize=function(S,I,V){ye=S,Pe=I,ge=V,t.width=Math.floor(S*V),t.height=Math.floor(I*V),this.setViewport(0,0,S,I)},this.setEffects=function(S){if(y===yn){De("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(S){for(let I=0;I<S.length;I++)if(S[I].isOutputPass===!0){Ce("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}k.setEffects(S||[])},this.getCurrentViewport=function(S){return S.copy(ee)},this.getViewport=function(S){return S.copy(Le)},this.setViewport=function(S,I,V,O){S.isVector4?Le.set(S.x,S.y,S.z,S.w):Le.set(S,I,V,O),fe.viewport(ee.copy(Le).multiplyScalar(Un()).round())},this.getScissor=function(S){return S.copy(rt)},this.setScissor=function(S,I,V,O){S.isVector4?rt.set(S.x,S.y,S.z,S.w):rt.set(S,I,V,O),fe.scissor(Me.copy(rt).multiplyScalar(Un()).round())},this.getScissorTest=function(){return at},this.setScissorTest=function(S){fe.setScissorTest(at=S)},this.setOpaqueSort=function(S){ze=S},this.setTransparentSort=function(S){St=S},this.getClearColor=function(S){return S.copy(P.getClearColor())},this.setClearColor=function(){P.setClearColor(...arguments)},this.getClearAlpha=function(){return P.getClearAlpha()},this.setClearAlpha=function(){P.setClearAlpha(...arguments)},this.clear=function(S=!0,I=!0,V=!0){let O=0;if(S){let B=!1;if(ne!==null){let ue=ne.texture.format;B=p.has(ue)}if(B){let ue=ne.texture.type,ve=g.has(ue),ce=P.getClearColor(),_e=P.getClearAlpha(),we=ce.r,Be=ce.g,Ye=ce.b;ve?(M[0]=we,M[1]=Be,M[2]=Ye,M[3]=_e,N.clearBufferuiv(N.COLOR,0,M)):(w[0]=we,w[1]=Be,w[2]=Ye,w[3]=_e,N.clearBufferiv(N.COLOR,0,w))}else O|=N.COLOR_BUFFER_BIT}I&&(O|=N.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),V&&(O|=N.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),O!==0&&N.clear(O)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(S){S.setRenderer(this),z=S},this.dispose=function(){t.removeEventListener("webglcontextlost",Ae,!1),t.removeEventListener("webglcontextrestored",Ve,!1),t.removeEventListener("webglcontextcreationerror",pe,!1),P.dispose(),he.dispose(),Y.dispose(),Oe.dispose(),Ie.dispose(),T.dispose(),te.dispose(),F.dispose(),oe.dispose(),Te.dispose(),j.dispose(),ie.dispose(),ie.removeEventListener("sessionstart",gf),ie.removeEventListener("sessionend",_f),fs.stop()};function Ae(S){S.preventDefault(),Po("WebGLRenderer: Context Lost."),U=!0}function Ve(){Po("WebGLRenderer: Context Restored."),U=!1;let S=At.autoReset,I=ae.enabled,V=ae.autoUpdate,O=ae.needsUpdate,B=ae.type;He(),At.autoReset=S,ae.enabled=I,ae.autoUpdate=V,ae.needsUpdate=O,ae.type=B}function pe(S){De("WebGLRenderer: A WebGL context could not be created. Reason: ",S.statusMessage)}function ot(S){let I=S.target;I.removeEventListener("dispose",ot),Ut(I)}function Ut(S){ki(S),Ie.remove(S)}function ki(S){let I=Ie.get(S).programs;I!==void 0&&(I.forEach(function(V){j.releaseProgram(V)}),S.isShaderMaterial&&j.releaseShaderCache(S))}this.renderBufferDirect=function(S,I,V,O,B,ue){I===null&&(I=Dn);let ve=B.isMesh&&B.matrixWorld.determinantAffine()<0,ce=M0(S,I,V,O,B);fe.setMaterial(O,ve);let _e=V.index,we=1;if(O.wireframe===!0){if(_e=F.getWireframeAttribute(V),_e===void 0)return;we=2}let Be=V.drawRange,Ye=V.attributes.position,xe=Be.start*we,$e=(Be.start+Be.count)*we;ue!==null&&(xe=Math.max(xe,ue.start*we),$e=Math.min($e,(ue.start+ue.count)*we)),_e!==null?(xe=Math.max(xe,0),$e=Math.min($e,_e.count)):Ye!=null&&(xe=Math.max(xe,0),$e=Math.min($e,Ye.count));let bt=$e-xe;if(bt<0||bt===1/0)return;oe.setup(B,O,ce,V,_e);let ct,lt=W;if(_e!==null&&(ct=x.get(_e),lt=le,lt.setIndex(ct)),B.isMesh)O.wireframe===!0?(fe.setLineWidth(O.wireframeLinewidth*Un()),lt.setMode(N.LINES)):lt.setMode(N.TRIANGLES);else if(B.isLine){let jt=O.linewidth;jt===void 0&&(jt=1),fe.setLineWidth(jt*Un()),B.isLineSegments?lt.setMode(N.LINES):B.isLineLoop?lt.setMode(N.LINE_LOOP):lt.setMode(N.LINE_STRIP)}else B.isPoints?lt.setMode(N.POINTS):B.isSprite&&lt.setMode(N.TRIANGLES);if(B.isBatchedMesh)if(ut.get("WEBGL_multi_draw"))lt.renderMultiDraw(B._multiDrawStarts,B._multiDrawCounts,B._multiDrawCount);else{let jt=B._multiDrawStarts,Se=B._multiDrawCounts,rn=B._multiDrawCount,nt=_e?x.get(_e).bytesPerElement:1,ps=Ie.get(O).currentProgram.getUniforms();for(let Qt=0;Qt<rn;Qt++)ps.setValue(N,"_gl_DrawID",Qt),lt.render(jt[Qt]/nt,Se[Qt])}else if(B.isInstancedMesh)lt.renderInstances(xe,bt,B.count);else if(V.isInstancedBufferGeometry){let jt=V._maxInstanceCount!==void 0?V._maxInstanceCount:1/0,Se=Math.min(V.instanceCount,jt);lt.renderInstances(xe,bt,Se)}else lt.render(xe,bt)};function mf(S,I,V,O){z!==null&&S.isNodeMaterial&&z.setObject(O,S),Tt===!0&&$.setState(S,V,!1),S.transparent===!0&&S.side===zn&&S.forceSinglePass===!1?(S.side=dn,S.needsUpdate=!0,Jr(S,I,O),S.side=ls,S.needsUpdate=!0,Jr(S,I,O),S.side=zn):Jr(S,I,O)}this.compile=function(S,I,V=null){V===null&&(V=S),z!==null&&z.renderStart(S,I,V),R=Y.get(V),R.init(I),E.push(R),V.traverseVisible(function(B){B.isLight&&B.layers.test(I.layers)&&(R.pushLight(B),B.castShadow&&R.pushShadow(B))}),S!==V&&S.traverseVisible(function(B){B.isLight&&B.layers.test(I.layers)&&(R.pushLight(B),B.castShadow&&R.pushShadow(B))}),R.setupLights(),z!==null&&z.updateLights(R.state.lightsArray),pn=this.localClippingEnabled,Tt=$.init(this.clippingPlanes,pn),Tt===!0&&$.setGlobalState(this.clippingPlanes,I),z!==null&&ae.render(R.state.shadowsArray,V,I);let O=new Set;return S.traverse(function(B){if(!(B.isMesh||B.isPoints||B.isLine||B.isSprite))return;let ue=B.material;if(ue)if(Array.isArray(ue))for(let ve=0;ve<ue.length;ve++){let ce=ue[ve];mf(ce,V,I,B),O.add(ce)}else mf(ue,V,I,B),O.add(ue)}),R=E.pop(),z!==null&&z.renderEnd(),O},this.compileAsync=function(S,I,V=null){let O=this.compile(S,I,V);return new Promise(B=>{function ue(){if(O.forEach(function(ve){let _e=Ie.get(ve).currentProgram;(_e===void 0||_e.isReady())&&O.delete(ve)}),O.size===0){B(S);return}setTimeout(ue,10)}ut.get("KHR_parallel_shader_compile")!==null?ue():setTimeout(ue,10)})};let Ch=null;function S0(S){Ch&&Ch(S)}function gf(){fs.stop()}function _f(){fs.start()}let fs=new zg;fs.setAnimationLoop(S0),typeof self<"u"&&fs.setContext(self),this.setAnimationLoop=function(S){Ch=S,ie.setAnimationLoop(S),S===null?fs.stop():fs.start()},ie.addEventListener("sessionstart",gf),ie.addEventListener("sessionend",_f),this.render=function(S,I){if(I!==void 0&&I.isCamera!==!0){De("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(U===!0)return;z!==null&&z.renderStart(S,I);let V=ie.enabled===!0&&ie.isPresenting===!0,O=k!==null&&(ne===null||V)&&k.begin(D,ne);if(S.matrixWorldAutoUpdate===!0&&S.updateMatrixWorld(),I.parent===null&&I.matrixWorldAutoUpdate===!0&&I.updateMatrixWorld(),ie.enabled===!0&&ie.isPresenting===!0&&(k===null||k.isCompositing()===!1)&&(ie.cameraAutoUpdate===!0&&ie.updateCamera(I),I=ie.getCamera()),S.isScene===!0&&S.onBeforeRender(D,S,I,ne),R=Y.get(S,E.length),R.init(I),R.state.textureUnits=Oe.getTextureUnits(),E.push(R),pt.multiplyMatrices(I.projectionMatrix,I.matrixWorldInverse),I.isArrayCamera?Vt.setFromArrayCamera(I):qe.setFromProjectionMatrix(pt,Bn,I.reversedDepth),pn=this.localClippingEnabled,Tt=$.init(this.clippingPlanes,pn),C=he.get(S,_.length),C.init(),_.push(C),this.info.render.frame++,ie.enabled===!0&&ie.isPresenting===!0){let ve=D.xr.getDepthSensingMesh();ve!==null&&Ph(ve,I,-1/0,D.sortObjects)}Ph(S,I,0,D.sortObjects),C.finish(),z!==null&&z.updateLights(R.state.lightsArray),D.sortObjects===!0&&C.sort(ze,St),Nn=ie.enabled===!1||ie.isPresenting===!1||ie.hasDepthSensing()===!1,Nn&&P.addToRenderList(C,S),this.info.autoReset===!0&&this.info.reset(),Tt===!0&&$.beginShadows();let B=R.state.shadowsArray;if(ae.render(B,S,I),Tt===!0&&$.endShadows(),(O&&k.hasRenderPass())===!1){let ve=C.opaque,ce=C.transmissive;if(R.setupLights(),I.isArrayCamera){let _e=I.cameras;if(ce.length>0)for(let we=0,Be=_e.length;we<Be;we++){let Ye=_e[we];yf(ve,ce,S,Ye)}Nn&&P.render(S);for(let we=0,Be=_e.length;we<Be;we++){let Ye=_e[we];vf(C,S,Ye,Ye.viewport)}}else ce.length>0&&yf(ve,ce,S,I),Nn&&P.render(S),vf(C,S,I)}ne!==null&&G===0&&(Oe.updateMultisampleRenderTarget(ne),Oe.updateRenderTargetMipmap(ne)),O&&k.end(D),S.isScene===!0&&S.onAfterRender(D,S,I),oe.resetDefaultState(),X=-1,Q=null,E.pop(),E.length>0?(R=E[E.length-1],Oe.setTextureUnits(R.state.textureUnits),Tt===!0&&$.setGlobalState(D.clippingPlanes,R.state.camera)):R=null,_.pop(),_.length>0?C=_[_.length-1]:C=null,z!==null&&z.renderEnd()};function Ph(S,I,V,O){if(S.visible===!1)return;if(S.layers.test(I.layers)){if(S.isGroup)V=S.renderOrder;else if(S.isLOD)S.autoUpdate===!0&&S.update(I);else if(S.isLight)R.pushLight(S),S.castShadow&&R.pushShadow(S);else if(S.isSprite){let ve=I.isArrayCamera?Vt:qe;if(!S.frustumCulled||S.intersectsFrustum(ve)){O&&Nt.setFromMatrixPosition(S.matrixWorld).applyMatrix4(pt);let ce=te.update(S),_e=S.material;_e.visible&&C.push(S,ce,_e,V,Nt.z,null,I)}}else if(S.isMesh||S.isLine||S.isPoints){let ve=I.isArrayCamera?Vt:qe;if(!S.frustumCulled||S.intersectsFrustum(ve)){let ce=te.update(S),_e=S.material;if(O&&(S.boundingSphere!==void 0?(S.boundingSphere===null&&S.computeBoundingSphere(),Nt.copy(S.boundingSphere.center)):(ce.boundingSphere===null&&ce.computeBoundingSphere(),Nt.copy(ce.boundingSphere.center)),Nt.applyMatrix4(S.matrixWorld).applyMatrix4(pt)),Array.isArray(_e)){let we=ce.groups;for(let Be=0,Ye=we.length;Be<Ye;Be++){let xe=we[Be],$e=_e[xe.materialIndex];$e&&$e.visible&&C.push(S,ce,$e,V,Nt.z,xe,I)}}else _e.visible&&C.push(S,ce,_e,V,Nt.z,null,I)}}}let ue=S.children;for(let ve=0,ce=ue.length;ve<ce;ve++)Ph(ue[ve],I,V,O)}function vf(S,I,V,O){let{opaque:B,transmissive:ue,transparent:ve}=S;R.setupLightsView(V),Tt===!0&&$.setGlobalState(D.clippingPlanes,V),O&&fe.viewport(ee.copy(O)),B.length>0&&_a(B,I,V),ue.length>0&&_a(ue,I,V),ve.length>0&&_a(ve,I,V),fe.buffers.depth.setTest(!0),fe.buffers.depth.setMask(!0),fe.buffers.color.setMask(!0),fe.setPolygonOffset(!1)}function yf(S,I,V,O){if((V.isScene===!0?V.overrideMaterial:null)!==null)return;if(R.state.transmissionRenderTarget[O.id]===void 0){let xe=ut.has("EXT_color_buffer_half_float")||ut.has("EXT_color_buffer_float");R.state.transmissionRenderTarget[O.id]=new un(1,1,{generateMipmaps:!0,type:xe?ti:yn,minFilter:Ui,samples:Math.max(4,dt.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:Ze.workingColorSpace})}let ue=R.state.transmissionRenderTarget[O.id],ve=O.viewport||ee;ue.setSize(ve.z*D.transmissionResolutionScale,ve.w*D.transmissionResolutionScale);let ce=D.getRenderTarget(),_e=D.getActiveCubeFace(),we=D.getActiveMipmapLevel();D.setRenderTarget(ue),D.getClearColor(Z),me=D.getClearAlpha(),me<1&&D.setClearColor(16777215,.5),D.clear(),Nn&&P.render(V);let Be=D.toneMapping;D.toneMapping=di;let Ye=O.viewport;if(O.viewport!==void 0&&(O.viewport=void 0),R.setupLightsView(O),Tt===!0&&$.setGlobalState(D.clippingPlanes,O),_a(S,V,O),Oe.updateMultisampleRenderTarget(ue),Oe.updateRenderTargetMipmap(ue),ut.has("WEBGL_multisampled_render_to_texture")===!1){let xe=!1;for(let $e=0,bt=I.length;$e<bt;$e++){let ct=I[$e],{object:lt,geometry:jt,material:Se,group:rn}=ct;if(Se.side===zn&&lt.layers.test(O.layers)){let nt=Se.side;Se.side=dn,Se.needsUpdate=!0,xf(lt,V,O,jt,Se,rn),Se.side=nt,Se.needsUpdate=!0,xe=!0}}xe===!0&&(Oe.updateMultisampleRenderTarget(ue),Oe.updateRenderTargetMipmap(ue))}D.setRenderTarget(ce,_e,we),D.setClearColor(Z,me),Ye!==void 0&&(O.viewport=Ye),D.toneMapping=Be}function _a(S,I,V){let O=I.isScene===!0?I.overrideMaterial:null;for(let B=0,ue=S.length;B<ue;B++){let ve=S[B],{object:ce,geometry:_e,group:we}=ve,Be=ve.material;Be.allowOverride===!0&&O!==null&&(Be=O),ce.layers.test(V.layers)&&xf(ce,I,V,_e,Be,we)}}function xf(S,I,V,O,B,ue){z!==null&&B.isNodeMaterial&&z.setObject(S,B),S.onBeforeRender(D,I,V,O,B,ue),S.modelViewMatrix.multiplyMatrices(V.matrixWorldInverse,S.matrixWorld),S.normalMatrix.getNormalMatrix(S.modelViewMatrix),B.onBeforeRender(D,I,V,O,S,ue),B.transparent===!0&&B.side===zn&&B.forceSinglePass===!1?(B.side=dn,B.needsUpdate=!0,D.renderBufferDirect(V,I,O,B,S,ue),B.side=ls,B.needsUpdate=!0,D.renderBufferDirect(V,I,O,B,S,ue),B.side=zn):D.renderBufferDirect(V,I,O,B,S,ue),S.onAfterRender(D,I,V,O,B,ue)}function Sf(S){let I=0;for(let V of S)V.texture!==null&&I++;return I}function Jr(S,I,V){I.isScene!==!0&&(I=Dn);let O=Ie.get(S),B=R.state.lights,ue=R.state.shadowsArray,ve=B.state.version,ce=j.getParameters(S,B.state,ue,I,V,R.state.lightProbeGridArray),_e=j.getProgramCacheKey(ce),we=O.programs;O.environment=S.isMeshStandardMaterial||S.isMeshLambertMaterial||S.isMeshPhongMaterial?I.environment:null,O.fog=I.fog;let Be=S.isMeshStandardMaterial||S.isMeshLambertMaterial&&!S.envMap||S.isMeshPhongMaterial&&!S.envMap;O.envMap=T.get(S.envMap||O.environment,Be),O.envMapRotation=O.environment!==null&&S.envMap===null?I.environmentRotation:S.envMapRotation,we===void 0&&(S.addEventListener("dispose",ot),we=new Map,O.programs=we,O.programVariants=new Map);let Ye=we.get(_e);if(Ye!==void 0){if(O.currentProgram===Ye&&O.lightsStateVersion===ve)return Mf(S,ce),Ye}else ce.uniforms=j.getUniforms(S),z!==null&&S.isNodeMaterial&&z.build(S,V,ce),S.onBeforeCompile(ce,D),Ye=j.acquireProgram(ce,_e),we.set(_e,Ye),O.uniforms=ce.uniforms;let xe=O.uniforms;return(!S.isShaderMaterial&&!S.isRawShaderMaterial||S.clipping===!0)&&(xe.clippingPlanes=$.uniform),Mf(S,ce),O.needsLights=E0(S),O.lightsStateVersion=ve,O.needsLights&&(xe.ambientLightColor.value=B.state.ambient,xe.lightProbe.value=B.state.probe,xe.sunLights.value=B.state.sun,xe.sunLightShadows.value=B.state.sunShadow,xe.directionalLights.value=B.state.directional,xe.directionalLightShadows.value=B.state.directionalShadow,xe.spotLights.value=B.state.spot,xe.spotLightShadows.value=B.state.spotShadow,xe.rectAreaLights.value=B.state.rectArea,xe.ltc_1.value=B.state.rectAreaLTC1,xe.ltc_2.value=B.state.rectAreaLTC2,xe.pointLights.value=B.state.point,xe.pointLightShadows.value=B.state.pointShadow,xe.hemisphereLights.value=B.state.hemi,xe.sunShadowMatrix.value=B.state.sunShadowMatrix,xe.sunShadowCascade.value=B.state.sunShadowCascade,xe.directionalShadowMatrix.value=B.state.directionalShadowMatrix,xe.spotLightMatrix.value=B.state.spotLightMatrix,xe.spotLightMap.value=B.state.spotLightMap,xe.pointShadowMatrix.value=B.state.pointShadowMatrix),O.numLightProbeGrids=Sf(R.state.lightProbeGridArray),O.currentProgram=Ye,O.uniformsList=null,Ye}function b0(S,I,V,O,B){let ue=Ie.get(S),ve=ue.currentProgram.id+","+O+","+B,ce=ue.programVariants.get(ve);return ce===void 0?(ce=Jr(S,I,V),ue.programVariants.set(ve,ce)):(ue.currentProgram=ce,ue.uniformsList=null,ue.outputColorSpace=O,ue.toneMapping=B),ce}function bf(S){if(S.uniformsList===null){let I=S.currentProgram.getUniforms();S.uniformsList=Or.seqWithValue(I.seq,S.uniforms)}return S.uniformsList}function Mf(S,I){let V=Ie.get(S);V.outputColorSpace=I.outputColorSpace,V.batching=I.batching,V.batchingColor=I.batchingColor,V.instancing=I.instancing,V.instancingColor=I.instancingColor,V.instancingMorph=I.instancingMorph,V.skinning=I.skinning,V.morphTargets=I.morphTargets,V.morphNormals=I.morphNormals,V.morphColors=I.morphColors,V.morphTargetsCount=I.morphTargetsCount,V.numClippingPlanes=I.numClippingPlanes,V.numIntersection=I.numClipIntersection,V.vertexAlphas=I.vertexAlphas,V.vertexTangents=I.vertexTangents,V.toneMapping=I.toneMapping}function M0(S,I,V,O,B){I.isScene!==!0&&(I=Dn),Oe.resetTextureUnits();let ue=I.fog,ve=O.isMeshStandardMaterial||O.isMeshLambertMaterial||O.isMeshPhongMaterial?I.environment:null,ce=ne===null?D.outputColorSpace:ne.isXRRenderTarget===!0?ne.texture.colorSpace:Ze.workingColorSpace,_e=O.isMeshStandardMaterial||O.isMeshLambertMaterial&&!O.envMap||O.isMeshPhongMaterial&&!O.envMap,we=T.get(O.envMap||ve,_e),Be=O.vertexColors===!0&&!!V.attributes.color&&V.attributes.color.itemSize===4,Ye=!!V.attributes.tangent&&(!!O.normalMap||O.anisotropy>0),xe=!!V.morphAttributes.position,$e=!!V.morphAttributes.normal,bt=!!V.morphAttributes.color,ct=di;O.toneMapped&&(ne===null||ne.isXRRenderTarget===!0)&&(ct=D.toneMapping);let lt=V.morphAttributes.position||V.morphAttributes.normal||V.morphAttributes.color,jt=lt!==void 0?lt.length:0,Se=Ie.get(O),rn=R.state.lights;if(Tt===!0&&(pn===!0||S!==Q)){let mt=S===Q&&O.id===X;$.setState(O,S,mt)}let nt=!1,ps=!1;O.version===Se.__version?Se.needsLights&&Se.lightsStateVersion!==rn.state.version||B.isBatchedMesh&&Se.batching===!1||!B.isBatchedMesh&&Se.batching===!0||B.isBatchedMesh&&Se.batchingColor===!0&&B._colorsTexture===null||B.isBatchedMesh&&Se.batchingColor===!1&&B._colorsTexture!==null||B.isInstancedMesh&&Se.instancing===!1||!B.isInstancedMesh&&Se.instancing===!0||B.isSkinnedMesh&&Se.skinning===!1||!B.isSkinnedMesh&&Se.skinning===!0||B.isInstancedMesh&&Se.instancingColor===!0&&B.instanceColor===null||B.isInstancedMesh&&Se.instancingColor===!1&&B.instanceColor!==null||B.isInstancedMesh&&Se.instancingMorph===!0&&B.morphTexture===null||B.isInstancedMesh&&Se.instancingMorph===!1&&B.morphTexture!==null||Se.envMap!==we||O.fog===!0&&Se.fog!==ue||Se.numClippingPlanes!==void 0&&(Se.numClippingPlanes!==$.numPlanes||Se.numIntersection!==$.numIntersection)||Se.vertexAlphas!==Be||Se.vertexTangents!==Ye||Se.morphTargets!==xe||Se.morphNormals!==$e||Se.morphColors!==bt||Se.morphTargetsCount!==jt||Se.numLightProbeGrids!==Sf(R.state.lightProbeGridArray)?nt=!0:(Se.outputColorSpace!==ce||Se.toneMapping!==ct)&&(ps=!0):(nt=!0,Se.__version=O.version);let Qt=Se.currentProgram;(nt===!0||ps===!0)&&(Qt=ps===!0?b0(O,I,B,ce,ct):Jr(O,I,B),z&&O.isNodeMaterial&&z.onUpdateProgram(O,Qt,Se));let va=!1,zi=!1,ms=!1,Je=Qt.getUniforms(),Gt=Se.uniforms;if(fe.useProgram(Qt.program)&&(va=!0,zi=!0,ms=!0),O.id!==X&&(X=O.id,zi=!0),va||Q!==S){fe.buffers.depth.getReversed()&&S.reversedDepth!==!0&&(S._reversedDepth=!0,S.updateProjectionMatrix()),Je.setValue(N,"projectionMatrix",S.projectionMatrix),Je.setValue(N,"viewMatrix",S.matrixWorldInverse);let Ot=Je.map.cameraPosition;Ot!==void 0&&Ot.setValue(N,si.setFromMatrixPosition(S.matrixWorld)),dt.logarithmicDepthBuffer&&Je.setValue(N,"logDepthBufFC",2/(Math.log(S.far+1)/Math.LN2)),(O.isMeshPhongMaterial||O.isMeshToonMaterial||O.isMeshLambertMaterial||O.isMeshBasicMaterial||O.isMeshStandardMaterial||O.isShaderMaterial)&&Je.setValue(N,"isOrthographic",S.isOrthographicCamera===!0),Q!==S&&(Q=S,zi=!0,ms=!0)}if(Se.needsLights&&(rn.state.sunShadowMap.length>0&&Je.setValue(N,"sunShadowMap",rn.state.sunShadowMap,Oe),rn.state.directionalShadowMap.length>0&&Je.setValue(N,"directionalShadowMap",rn.state.directionalShadowMap,Oe),rn.state.spotShadowMap.length>0&&Je.setValue(N,"spotShadowMap",rn.state.spotShadowMap,Oe),rn.state.pointShadowMap.length>0&&Je.setValue(N,"pointShadowMap",rn.state.pointShadowMap,Oe)),B.isSkinnedMesh){Je.setOptional(N,B,"bindMatrix"),Je.setOptional(N,B,"bindMatrixInverse");let mt=B.skeleton;mt&&(mt.boneTexture===null&&mt.computeBoneTexture(),Je.setValue(N,"boneTexture",mt.boneTexture,Oe))}B.isBatchedMesh&&(Je.setOptional(N,B,"batchingTexture"),Je.setValue(N,"batchingTexture",B._matricesTexture,Oe),Je.setOptional(N,B,"batchingIdTexture"),Je.setValue(N,"batchingIdTexture",B._indirectTexture,Oe),Je.setOptional(N,B,"batchingColorTexture"),B._colorsTexture!==null&&Je.setValue(N,"batchingColorTexture",B._colorsTexture,Oe));let Vn=V.morphAttributes;if((Vn.position!==void 0||Vn.normal!==void 0||Vn.color!==void 0)&&K.update(B,V,Qt),(zi||Se.receiveShadow!==B.receiveShadow)&&(Se.receiveShadow=B.receiveShadow,Je.setValue(N,"receiveShadow",B.receiveShadow)),(O.isMeshStandardMaterial||O.isMeshLambertMaterial||O.isMeshPhongMaterial)&&O.envMap===null&&I.environment!==null&&(Gt.envMapIntensity.value=I.environmentIntensity),Gt.dfgLUT!==void 0&&(Gt.dfgLUT.value=zw()),zi){if(Je.setValue(N,"toneMappingExposure",D.toneMappingExposure),Se.needsLights&&w0(Gt,ms),ue&&O.fog===!0&&re.refreshFogUniforms(Gt,ue),re.refreshMaterialUniforms(Gt,O,ge,Pe,R.state.transmissionRenderTarget[S.id]),Se.needsLights&&Se.numLightProbeGrids>0){let mt=b,Ot=0;for(let vi of R.state.lightProbeGridArray)vi.texture!==null&&(mt.textures[Ot]=vi.texture,mt.min[Ot]=vi.boundingBox.min,mt.max[Ot]=vi.boundingBox.max,mt.resolution[Ot]=vi.resolution,Ot++);for(let vi in mt)mt[vi].length=Ot;Gt.probesSH.value=mt.textures,Gt.probesMin.value=mt.min,Gt.probesMax.value=mt.max,Gt.probesResolution.value=mt.resolution}Or.upload(N,bf(Se),Gt,Oe)}if(O.isShaderMaterial&&O.uniformsNeedUpdate===!0&&(Or.upload(N,bf(Se),Gt,Oe),O.uniformsNeedUpdate=!1),O.isSpriteMaterial&&Je.setValue(N,"center",B.center),Je.setValue(N,"modelViewMatrix",B.modelViewMatrix),Je.setValue(N,"normalMatrix",B.normalMatrix),Je.setValue(N,"modelMatrix",B.matrixWorld),O.uniformsGroups!==void 0){let mt=O.uniformsGroups;for(let Ot=0,vi=mt.length;Ot<vi;Ot++){let Ef=mt[Ot];Te.update(Ef,Qt),Te.bind(Ef,Qt)}}return Qt}function w0(S,I){S.ambientLightColor.needsUpdate=I,S.lightProbe.needsUpdate=I,S.sunLights.needsUpdate=I,S.sunLightShadows.needsUpdate=I,S.directionalLights.needsUpdate=I,S.directionalLightShadows.needsUpdate=I,S.pointLights.needsUpdate=I,S.pointLightShadows.needsUpdate=I,S.spotLights.needsUpdate=I,S.spotLightShadows.needsUpdate=I,S.rectAreaLights.needsUpdate=I,S.hemisphereLights.needsUpdate=I}function E0(S){return S.isMeshLambertMaterial||S.isMeshToonMaterial||S.isMeshPhongMaterial||S.isMeshStandardMaterial||S.isShadowMaterial||S.isShaderMaterial&&S.lights===!0}this.getActiveCubeFace=function(){return J},this.getActiveMipmapLevel=function(){return G},this.getRenderTarget=function(){return ne},this.setRenderTargetTextures=function(S,I,V){let O=Ie.get(S);O.__autoAllocateDepthBuffer=S.resolveDepthBuffer===!1,O.__autoAllocateDepthBuffer===!1&&(O.__useRenderToTexture=!1),Ie.get(S.texture).__webglTexture=I,Ie.get(S.depthTexture).__webglTexture=O.__autoAllocateDepthBuffer?void 0:V,O.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(S,I){let V=Ie.get(S);V.__webglFramebuffer=I,V.__useDefaultFramebuffer=I===void 0},this.setRenderTarget=function(S,I=0,V=0){ne=S,J=I,G=V;let O=null,B=!1,ue=!1;if(S){let ce=Ie.get(S);if(ce.__useDefaultFramebuffer!==void 0){fe.bindFramebuffer(N.FRAMEBUFFER,ce.__webglFramebuffer),ee.copy(S.viewport),Me.copy(S.scissor),Fe=S.scissorTest,fe.viewport(ee),fe.scissor(Me),fe.setScissorTest(Fe),X=-1;return}else if(ce.__webglFramebuffer===void 0)Oe.setupRenderTarget(S);else if(ce.__hasExternalTextures)Oe.rebindTextures(S,Ie.get(S.texture).__webglTexture,Ie.get(S.depthTexture).__webglTexture);else if(S.depthBuffer){let Be=S.depthTexture;if(ce.__boundDepthTexture!==Be){if(Be!==null&&Ie.has(Be)&&(S.width!==Be.image.width||S.height!==Be.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Oe.setupDepthRenderbuffer(S)}}let _e=S.texture;(_e.isData3DTexture||_e.isDataArrayTexture||_e.isCompressedArrayTexture)&&(ue=!0);let we=Ie.get(S).__webglFramebuffer;S.isWebGLCubeRenderTarget?(Array.isArray(we[I])?O=we[I][V]:O=we[I],B=!0):S.samples>0&&Oe.useMultisampledRTT(S)===!1?O=Ie.get(S).__webglMultisampledFramebuffer:Array.isArray(we)?O=we[V]:O=we,ee.copy(S.viewport),Me.copy(S.scissor),Fe=S.scissorTest}else ee.copy(Le).multiplyScalar(ge).floor(),Me.copy(rt).multiplyScalar(ge).floor(),Fe=at;if(V!==0&&(O=H),fe.bindFramebuffer(N.FRAMEBUFFER,O)&&fe.drawBuffers(S,O),fe.viewport(ee),fe.scissor(Me),fe.setScissorTest(Fe),B){let ce=Ie.get(S.texture);N.framebufferTexture2D(N.FRAMEBUFFER,N.COLOR_ATTACHMENT0,N.TEXTURE_CUBE_MAP_POSITIVE_X+I,ce.__webglTexture,V)}else if(ue){let ce=I;for(let _e=0;_e<S.textures.length;_e++){let we=Ie.get(S.textures[_e]);N.framebufferTextureLayer(N.FRAMEBUFFER,N.COLOR_ATTACHMENT0+_e,we.__webglTexture,V,ce)}}else if(S!==null&&V!==0){let ce=Ie.get(S.texture);N.framebufferTexture2D(N.FRAMEBUFFER,N.COLOR_ATTACHMENT0,N.TEXTURE_2D,ce.__webglTexture,V)}X=-1};function wf(S){let I=Ie.get(S);return(I.__readFormat!==S.format||I.__readType!==S.type)&&(I.__readFormat=S.format,I.__readType=S.type,I.__formatReadable=dt.textureFormatReadable(S.format),I.__typeReadable=dt.textureTypeReadable(S.type)),I}this.readRenderTargetPixels=function(S,I,V,O,B,ue,ve,ce=0){if(!(S&&S.isWebGLRenderTarget)){De("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let _e=Ie.get(S).__webglFramebuffer;if(S.isWebGLCubeRenderTarget&&ve!==void 0&&(_e=_e[ve],Array.isArray(_e)&&(_e=_e[0])),_e){fe.bindFramebuffer(N.FRAMEBUFFER,_e);try{let we=S.textures[ce],Be=we.format,Ye=we.type;S.textures.length>1&&N.readBuffer(N.COLOR_ATTACHMENT0+ce);let xe=wf(we);if(xe.__formatReadable===!1){De("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(xe.__typeReadable===!1){De("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}I>=0&&I<=S.width-O&&V>=0&&V<=S.height-B&&N.readPixels(I,V,O,B,se.convert(Be),se.convert(Ye),ue)}finally{let we=ne!==null?Ie.get(ne).__webglFramebuffer:null;fe.bindFramebuffer(N.FRAMEBUFFER,we)}}},this.readRenderTargetPixelsAsync=async function(S,I,V,O,B,ue,ve,ce=0){if(!(S&&S.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let _e=Ie.get(S).__webglFramebuffer;if(S.isWebGLCubeRenderTarget&&ve!==void 0&&(_e=_e[ve],Array.isArray(_e)&&(_e=_e[0])),_e)if(I>=0&&I<=S.width-O&&V>=0&&V<=S.height-B){fe.bindFramebuffer(N.FRAMEBUFFER,_e);let we=S.textures[ce],Be=we.format,Ye=we.type;S.textures.length>1&&N.readBuffer(N.COLOR_ATTACHMENT0+ce);let xe=wf(we);if(xe.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(xe.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let $e=N.createBuffer();N.bindBuffer(N.PIXEL_PACK_BUFFER,$e),N.bufferData(N.PIXEL_PACK_BUFFER,ue.byteLength,N.STREAM_READ),N.readPixels(I,V,O,B,se.convert(Be),se.convert(Ye),0),N.bindBuffer(N.PIXEL_PACK_BUFFER,null);let bt=ne!==null?Ie.get(ne).__webglFramebuffer:null;fe.bindFramebuffer(N.FRAMEBUFFER,bt);let ct=N.fenceSync(N.SYNC_GPU_COMMANDS_COMPLETE,0);return N.flush(),await hg(N,ct,4),N.bindBuffer(N.PIXEL_PACK_BUFFER,$e),N.getBufferSubData(N.PIXEL_PACK_BUFFER,0,ue),N.bindBuffer(N.PIXEL_PACK_BUFFER,null),N.deleteBuffer($e),N.deleteSync(ct),ue}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(S,I=null,V=0){let O=Math.pow(2,-V),B=Math.floor(S.image.width*O),ue=Math.floor(S.image.height*O),ve=I!==null?I.x:0,ce=I!==null?I.y:0;Oe.setTexture2D(S,0),N.copyTexSubImage2D(N.TEXTURE_2D,V,0,0,ve,ce,B,ue),fe.unbindTexture()},this.copyTextureToTexture=function(S,I,V=null,O=null,B=0,ue=0){let ve,ce,_e,we,Be,Ye,xe,$e,bt,ct=S.isCompressedTexture?S.mipmaps[ue]:S.image;if(V!==null)ve=V.max.x-V.min.x,ce=V.max.y-V.min.y,_e=V.isBox3?V.max.z-V.min.z:1,we=V.min.x,Be=V.min.y,Ye=V.isBox3?V.min.z:0;else{let Je=Math.pow(2,-B);ve=Math.floor(ct.width*Je),ce=Math.floor(ct.height*Je),S.isDataArrayTexture?_e=ct.depth:S.isData3DTexture?_e=Math.floor(ct.depth*Je):_e=1,we=0,Be=0,Ye=0}O!==null?(xe=O.x,$e=O.y,bt=O.z):(xe=0,$e=0,bt=0);let lt=se.convert(I.format),jt=se.convert(I.type),Se;I.isData3DTexture?(Oe.setTexture3D(I,0),Se=N.TEXTURE_3D):I.isDataArrayTexture||I.isCompressedArrayTexture?(Oe.setTexture2DArray(I,0),Se=N.TEXTURE_2D_ARRAY):(Oe.setTexture2D(I,0),Se=N.TEXTURE_2D),fe.activeTexture(N.TEXTURE0),fe.pixelStorei(N.UNPACK_FLIP_Y_WEBGL,I.flipY),fe.pixelStorei(N.UNPACK_PREMULTIPLY_ALPHA_WEBGL,I.premultiplyAlpha),fe.pixelStorei(N.UNPACK_ALIGNMENT,I.unpackAlignment);let rn=fe.getParameter(N.UNPACK_ROW_LENGTH),nt=fe.getParameter(N.UNPACK_IMAGE_HEIGHT),ps=fe.getParameter(N.UNPACK_SKIP_PIXELS),Qt=fe.getParameter(N.UNPACK_SKIP_ROWS),va=fe.getParameter(N.UNPACK_SKIP_IMAGES);fe.pixelStorei(N.UNPACK_ROW_LENGTH,ct.width),fe.pixelStorei(N.UNPACK_IMAGE_HEIGHT,ct.height),fe.pixelStorei(N.UNPACK_SKIP_PIXELS,we),fe.pixelStorei(N.UNPACK_SKIP_ROWS,Be),fe.pixelStorei(N.UNPACK_SKIP_IMAGES,Ye);let zi=S.isDataArrayTexture||S.isData3DTexture,ms=I.isDataArrayTexture||I.isData3DTexture;if(S.isDepthTexture){let Je=Ie.get(S),Gt=Ie.get(I),Vn=Ie.get(Je.__renderTarget),mt=Ie.get(Gt.__renderTarget);fe.bindFramebuffer(N.READ_FRAMEBUFFER,Vn.__webglFramebuffer),fe.bindFramebuffer(N.DRAW_FRAMEBUFFER,mt.__webglFramebuffer);for(let Ot=0;Ot<_e;Ot++)zi&&(N.framebufferTextureLayer(N.READ_FRAMEBUFFER,N.COLOR_ATTACHMENT0,Ie.get(S).__webglTexture,B,Ye+Ot),N.framebufferTextureLayer(N.DRAW_FRAMEBUFFER,N.COLOR_ATTACHMENT0,Ie.get(I).__webglTexture,ue,bt+Ot)),N.blitFramebuffer(we,Be,we+ve,Be+ce,xe,$e,xe+ve,$e+ce,N.DEPTH_BUFFER_BIT,N.NEAREST);fe.bindFramebuffer(N.READ_FRAMEBUFFER,null),fe.bindFramebuffer(N.DRAW_FRAMEBUFFER,null)}else if(B!==0||S.isRenderTargetTexture||Ie.has(S)){let Je=Ie.get(S),Gt=Ie.get(I);fe.bindFramebuffer(N.READ_FRAMEBUFFER,L),fe.bindFramebuffer(N.DRAW_FRAMEBUFFER,q);for(let Vn=0;Vn<_e;Vn++)zi?N.framebufferTextureLayer(N.READ_FRAMEBUFFER,N.COLOR_ATTACHMENT0,Je.__webglTexture,B,Ye+Vn):N.framebufferTexture2D(N.READ_FRAMEBUFFER,N.COLOR_ATTACHMENT0,N.TEXTURE_2D,Je.__webglTexture,B),ms?N.framebufferTextureLayer(N.DRAW_FRAMEBUFFER,N.COLOR_ATTACHMENT0,Gt.__webglTexture,ue,bt+Vn):N.framebufferTexture2D(N.DRAW_FRAMEBUFFER,N.COLOR_ATTACHMENT0,N.TEXTURE_2D,Gt.__webglTexture,ue),B!==0?N.blitFramebuffer(we,Be,we+ve,Be+ce,xe,$e,xe+ve,$e+ce,N.COLOR_BUFFER_BIT,N.NEAREST):ms?N.copyTexSubImage3D(Se,ue,xe,$e,bt+Vn,we,Be,ve,ce):N.copyTexSubImage2D(Se,ue,xe,$e,we,Be,ve,ce);fe.bindFramebuffer(N.READ_FRAMEBUFFER,null),fe.bindFramebuffer(N.DRAW_FRAMEBUFFER,null)}else ms?S.isDataTexture||S.isData3DTexture?N.texSubImage3D(Se,ue,xe,$e,bt,ve,ce,_e,lt,jt,ct.data):I.isCompressedArrayTexture?N.compressedTexSubImage3D(Se,ue,xe,$e,bt,ve,ce,_e,lt,ct.data):N.texSubImage3D(Se,ue,xe,$e,bt,ve,ce,_e,lt,jt,ct):S.isDataTexture?N.texSubImage2D(N.TEXTURE_2D,ue,xe,$e,ve,ce,lt,jt,ct.data):S.isCompressedTexture?N.compressedTexSubImage2D(N.TEXTURE_2D,ue,xe,$e,ct.width,ct.height,lt,ct.data):N.texSubImage2D(N.TEXTURE_2D,ue,xe,$e,ve,ce,lt,jt,ct);fe.pixelStorei(N.UNPACK_ROW_LENGTH,rn),fe.pixelStorei(N.UNPACK_IMAGE_HEIGHT,nt),fe.pixelStorei(N.UNPACK_SKIP_PIXELS,ps),fe.pixelStorei(N.UNPACK_SKIP_ROWS,Qt),fe.pixelStorei(N.UNPACK_SKIP_IMAGES,va),ue===0&&I.generateMipmaps===!0&&I.mipmapsAutoUpdate===!0&&N.generateMipmap(Se),fe.unbindTexture()},this.initRenderTarget=function(S){Ie.get(S).__webglFramebuffer===void 0&&Oe.setupRenderTarget(S)},this.initTexture=function(S){S.isCubeTexture?Oe.setTextureCube(S,0):S.isData3DTexture?Oe.setTexture3D(S,0):S.isDataArrayTexture||S.isCompressedArrayTexture?Oe.setTexture2DArray(S,0):Oe.setTexture2D(S,0),fe.unbindTexture()},this.resetState=function(){J=0,G=0,ne=null,fe.reset(),oe.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return Bn}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(e){this._outputColorSpace=e;let t=this.getContext();t.drawingBufferColorSpace=Ze._getDrawingBufferColorSpace(e),t.unpackColorSpace=Ze._getUnpackColorSpace()}};var qc="printed-picture";function jg(){let n=be.value,e=on.value;return n?v(Ne,{children:[v("h1",{children:n.title}),v("p",{children:[n.size,e?.maker].filter(Boolean).join(" · ")}),e?.draft&&v("p",{class:"draft",children:e.draft}),v("div",{id:qc}),v(Vw,{}),e?.paragraphs.map(t=>v("p",{children:t})),e&&v(Gw,{facts:e.facts}),e&&v(Jg,{kind:"photographs",pictures:e.photographs}),e&&v(Jg,{kind:"drawings",pictures:e.drawings})]}):null}function Vw(){let n=jh();return n&&v("p",{children:n})}function Gw({facts:n}){return v("dl",{children:n.map(e=>v("div",{children:v(Qh,{fact:e})}))})}function Jg({kind:n,pictures:e}){return v("div",{class:n,children:e.map(([t,i])=>v("figure",{children:[v("img",{src:i,alt:""}),v("figcaption",{children:t})]}))})}var Hw=250,Yc=8;function Qg(n,e){let t=()=>{n.renderer.getContext().isContextLost()||document.getElementById(qc)?.replaceChildren(qw(Ww(n,e)))},i=()=>document.getElementById(qc)?.replaceChildren();return addEventListener("beforeprint",t),addEventListener("afterprint",i),()=>{removeEventListener("beforeprint",t),removeEventListener("afterprint",i)}}function Ww(n,e){let{scene:t,canvas:i}=n,s=t.background;t.background=new Re("#ffffff"),n.picture();let r=document.createElement("canvas");r.width=i.width,r.height=i.height;let o=r.getContext("2d",{willReadFrequently:!0});return o.drawImage(i,0,0),t.background=s,n.draw(),Xw(o,e,i),o}function Xw(n,e,t){let i=t.getBoundingClientRect();if(!i.width)return;let s=n.canvas.width/i.width;n.scale(s,s);for(let o of e.querySelectorAll(".ink path")){let a=o.classList.contains("halo");n.strokeStyle=a?"#ffffff":"#000000",n.lineWidth=parseFloat(getComputedStyle(o).strokeWidth),n.stroke(new Path2D(o.getAttribute("d")??""))}n.textBaseline="middle",n.textAlign="center";let r=".label:not([hidden], .part, .finding)";for(let o of e.querySelectorAll(r)){let{left:a,top:l,width:c,height:h}=o.getBoundingClientRect(),[f,d]=[a-i.left,l-i.top];n.fillStyle="#ffffff",n.fillRect(f,d,c,h),n.fillStyle="#000000",n.font=getComputedStyle(o).font;let u=o.innerText.split(`
`);u.forEach((m,y)=>n.fillText(m,f+c/2,d+(y+.5)*h/u.length))}}function qw(n){let{width:e,height:t}=n.canvas,{data:i}=n.getImageData(0,0,e,t),[s,r,o,a]=[e,t,0,0];for(let c=0;c<t;c++)for(let h=0;h<e;h++){let f=4*(c*e+h);Math.min(i[f],i[f+1],i[f+2])>=Hw||(s=Math.min(s,h),o=Math.max(o,h),r=Math.min(r,c),a=Math.max(a,c))}if(o<s)return n.canvas;[s,r]=[Math.max(0,s-Yc),Math.max(0,r-Yc)],[o,a]=[Math.min(e,o+Yc),Math.min(t,a+Yc)];let l=document.createElement("canvas");return l.width=o-s,l.height=a-r,l.getContext("2d").drawImage(n.canvas,-s,-r),l}var Yw={ArrowLeft:(n,e)=>e?n.pan(-.06,0):n.turn(-7.5,0),ArrowRight:(n,e)=>e?n.pan(.06,0):n.turn(7.5,0),ArrowUp:(n,e)=>e?n.pan(0,.06):n.turn(0,7.5),ArrowDown:(n,e)=>e?n.pan(0,-.06):n.turn(0,-7.5),"+":n=>n.zoom(1.15),"=":n=>n.zoom(1.15),"-":n=>n.zoom(.8695652173913044),0:n=>n.frame(),Home:n=>n.frame()};function e_({canvas:n,eye:e}){return zd(n,({key:t,shiftKey:i})=>{let s=Yw[t];return s&&(()=>s(e,i))})}function zd(n,e){let t=i=>{if(i.ctrlKey||i.altKey||i.metaKey)return;let s=e(i);s&&(i.preventDefault(),s())};return n.addEventListener("keydown",t),()=>n.removeEventListener("keydown",t)}var $c=class{constructor(e){this.ended=e}ended;outlined=[];waiting=[];timer=0;begin(e){clearTimeout(this.timer),this.outlined=[],this.waiting=e}due(){return this.waiting.length?(this.outlined=this.waiting,this.waiting=[],this.timer=window.setTimeout(()=>{this.outlined=[],this.ended()},1200),!0):!1}};function pa(){return matchMedia("(prefers-reduced-motion: reduce)").matches}function Zc(n){return n*n*(3-2*n)}var t_={type:"change"},Gd={type:"start"},i_={type:"end"},Kc=new es,n_=new ln,$w=Math.cos(70*$t.DEG2RAD),Dt=new A,xn=2*Math.PI,it={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},Vd=1e-6,Jc=class extends Qo{constructor(e,t=null){super(e,t),this.state=it.NONE,this.target=new A,this.cursor=new A,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:kn.ROTATE,MIDDLE:kn.DOLLY,RIGHT:kn.PAN},this.touches={ONE:as.ROTATE,TWO:as.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new A,this._lastQuaternion=new Rn,this._lastTargetPosition=new A,this._quat=new Rn().setFromUnitVectors(e.up,new A(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new Ir,this._sphericalDelta=new Ir,this._scale=1,this._panOffset=new A,this._rotateStart=new Ee,this._rotateEnd=new Ee,this._rotateDelta=new Ee,this._panStart=new Ee,this._panEnd=new Ee,this._panDelta=new Ee,this._dollyStart=new Ee,this._dollyEnd=new Ee,this._dollyDelta=new Ee,this._dollyDirection=new A,this._mouse=new Ee,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=Kw.bind(this),this._onPointerDown=Zw.bind(this),this._onPointerUp=Jw.bind(this),this._onContextMenu=sE.bind(this),this._onMouseWheel=eE.bind(this),this._onKeyDown=tE.bind(this),this._onTouchStart=nE.bind(this),this._onTouchMove=iE.bind(this),this._onMouseDown=jw.bind(this),this._onMouseMove=Qw.bind(this),this._interceptControlDown=rE.bind(this),this._interceptControlUp=oE.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(e){this._cursorStyle=e,e==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(e){super.connect(e),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=it.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(e){e.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=e}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(t_),this.update(),this.state=it.NONE}pan(e,t){this._pan(e,t),this.update()}dollyIn(e){this._dollyIn(e),this.update()}dollyOut(e){this._dollyOut(e),this.update()}rotateLeft(e){this._rotateLeft(e),this.update()}rotateUp(e){this._rotateUp(e),this.update()}update(e=null){let t=this.object.position;Dt.copy(t).sub(this.target),Dt.applyQuaternion(this._quat),this._spherical.setFromVector3(Dt),this.autoRotate&&this.state===it.NONE&&this._rotateLeft(this._getAutoRotationAngle(e)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let i=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(i)&&isFinite(s)&&(i<-Math.PI?i+=xn:i>Math.PI&&(i-=xn),s<-Math.PI?s+=xn:s>Math.PI&&(s-=xn),i<=s?this._spherical.theta=Math.max(i,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(i+s)/2?Math.max(i,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(Dt.setFromSpherical(this._spherical),Dt.applyQuaternion(this._quatInverse),t.copy(this.target).add(Dt),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=Dt.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new A(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new A(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=Dt.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(Kc.origin.copy(this.object.position),Kc.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(Kc.direction))<$w?this.object.lookAt(this.target):(n_.setFromNormalAndCoplanarPoint(this.object.up,this.target),Kc.intersectPlane(n_,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>Vd||8*(1-this._lastQuaternion.dot(this.object.quaternion))>Vd||this._lastTargetPosition.distanceToSquared(this.target)>Vd?(this.dispatchEvent(t_),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(e){return e!==null?xn/60*this.autoRotateSpeed*e:xn/60/60*this.autoRotateSpeed}_getZoomScale(e){let t=Math.abs(e*.01);return Math.pow(.95,this.zoomSpeed*t)}_rotateLeft(e){this._sphericalDelta.theta-=e}_rotateUp(e){this._sphericalDelta.phi-=e}_panLeft(e,t){Dt.setFromMatrixColumn(t,0),Dt.multiplyScalar(-e),this._panOffset.add(Dt)}_panUp(e,t){this.screenSpacePanning===!0?Dt.setFromMatrixColumn(t,1):(Dt.setFromMatrixColumn(t,0),Dt.crossVectors(this.object.up,Dt)),Dt.multiplyScalar(e),this._panOffset.add(Dt)}_pan(e,t){let i=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;Dt.copy(s).sub(this.target);let r=Dt.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*e*r/i.clientHeight,this.object.matrix),this._panUp(2*t*r/i.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(e*(this.object.right-this.object.left)/this.object.zoom/i.clientWidth,this.object.matrix),this._panUp(t*(this.object.top-this.object.bottom)/this.object.zoom/i.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(e){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=e:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(e){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=e:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(e,t){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let i=this.domElement.getBoundingClientRect(),s=e-i.left,r=t-i.top,o=i.width,a=i.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(e){return Math.max(this.minDistance,Math.min(this.maxDistance,e))}_handleMouseDownRotate(e){this._rotateStart.set(e.clientX,e.clientY)}_handleMouseDownDolly(e){this._updateZoomParameters(e.clientX,e.clientY),this._dollyStart.set(e.clientX,e.clientY)}_handleMouseDownPan(e){this._panStart.set(e.clientX,e.clientY)}_handleMouseMoveRotate(e){this._rotateEnd.set(e.clientX,e.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let t=this.domElement;this._rotateLeft(xn*this._rotateDelta.x/t.clientHeight),this._rotateUp(xn*this._rotateDelta.y/t.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(e){this._dollyEnd.set(e.clientX,e.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(e){this._panEnd.set(e.clientX,e.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(e){this._updateZoomParameters(e.clientX,e.clientY),e.deltaY<0?this._dollyIn(this._getZoomScale(e.deltaY)):e.deltaY>0&&this._dollyOut(this._getZoomScale(e.deltaY)),this.update()}_handleKeyDown(e){let t=!1;switch(e.code){case this.keys.UP:e.ctrlKey||e.metaKey||e.shiftKey?this.enableRotate&&this._rotateUp(xn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),t=!0;break;case this.keys.BOTTOM:e.ctrlKey||e.metaKey||e.shiftKey?this.enableRotate&&this._rotateUp(-xn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),t=!0;break;case this.keys.LEFT:e.ctrlKey||e.metaKey||e.shiftKey?this.enableRotate&&this._rotateLeft(xn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),t=!0;break;case this.keys.RIGHT:e.ctrlKey||e.metaKey||e.shiftKey?this.enableRotate&&this._rotateLeft(-xn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),t=!0;break}t&&(e.preventDefault(),this.update())}_handleTouchStartRotate(e){if(this._pointers.length===1)this._rotateStart.set(e.pageX,e.pageY);else{let t=this._getSecondPointerPosition(e),i=.5*(e.pageX+t.x),s=.5*(e.pageY+t.y);this._rotateStart.set(i,s)}}_handleTouchStartPan(e){if(this._pointers.length===1)this._panStart.set(e.pageX,e.pageY);else{let t=this._getSecondPointerPosition(e),i=.5*(e.pageX+t.x),s=.5*(e.pageY+t.y);this._panStart.set(i,s)}}_handleTouchStartDolly(e){let t=this._getSecondPointerPosition(e),i=e.pageX-t.x,s=e.pageY-t.y,r=Math.sqrt(i*i+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(e){this.enableZoom&&this._handleTouchStartDolly(e),this.enablePan&&this._handleTouchStartPan(e)}_handleTouchStartDollyRotate(e){this.enableZoom&&this._handleTouchStartDolly(e),this.enableRotate&&this._handleTouchStartRotate(e)}_handleTouchMoveRotate(e){if(this._pointers.length==1)this._rotateEnd.set(e.pageX,e.pageY);else{let i=this._getSecondPointerPosition(e),s=.5*(e.pageX+i.x),r=.5*(e.pageY+i.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let t=this.domElement;this._rotateLeft(xn*this._rotateDelta.x/t.clientHeight),this._rotateUp(xn*this._rotateDelta.y/t.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(e){if(this._pointers.length===1)this._panEnd.set(e.pageX,e.pageY);else{let t=this._getSecondPointerPosition(e),i=.5*(e.pageX+t.x),s=.5*(e.pageY+t.y);this._panEnd.set(i,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(e){let t=this._getSecondPointerPosition(e),i=e.pageX-t.x,s=e.pageY-t.y,r=Math.sqrt(i*i+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(e.pageX+t.x)*.5,a=(e.pageY+t.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(e){this.enableZoom&&this._handleTouchMoveDolly(e),this.enablePan&&this._handleTouchMovePan(e)}_handleTouchMoveDollyRotate(e){this.enableZoom&&this._handleTouchMoveDolly(e),this.enableRotate&&this._handleTouchMoveRotate(e)}_addPointer(e){this._pointers.push(e.pointerId)}_removePointer(e){delete this._pointerPositions[e.pointerId];for(let t=0;t<this._pointers.length;t++)if(this._pointers[t]==e.pointerId){this._pointers.splice(t,1);return}}_isTrackingPointer(e){for(let t=0;t<this._pointers.length;t++)if(this._pointers[t]==e.pointerId)return!0;return!1}_trackPointer(e){let t=this._pointerPositions[e.pointerId];t===void 0&&(t=new Ee,this._pointerPositions[e.pointerId]=t),t.set(e.pageX,e.pageY)}_getSecondPointerPosition(e){let t=e.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[t]}_customWheelEvent(e){let t=e.deltaMode,i={clientX:e.clientX,clientY:e.clientY,deltaY:e.deltaY};switch(t){case 1:i.deltaY*=16;break;case 2:i.deltaY*=100;break}return e.ctrlKey&&!this._controlActive&&(i.deltaY*=10),i}};function Zw(n){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(n.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(n)&&(this._addPointer(n),n.pointerType==="touch"?this._onTouchStart(n):this._onMouseDown(n),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function Kw(n){this.enabled!==!1&&(n.pointerType==="touch"?this._onTouchMove(n):this._onMouseMove(n))}function Jw(n){switch(this._removePointer(n),this._pointers.length){case 0:this.domElement.releasePointerCapture(n.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(i_),this.state=it.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let e=this._pointers[0],t=this._pointerPositions[e];this._onTouchStart({pointerId:e,pageX:t.x,pageY:t.y});break}}function jw(n){let e;switch(n.button){case 0:e=this.mouseButtons.LEFT;break;case 1:e=this.mouseButtons.MIDDLE;break;case 2:e=this.mouseButtons.RIGHT;break;default:e=-1}switch(e){case kn.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(n),this.state=it.DOLLY;break;case kn.ROTATE:if(n.ctrlKey||n.metaKey||n.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(n),this.state=it.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(n),this.state=it.ROTATE}break;case kn.PAN:if(n.ctrlKey||n.metaKey||n.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(n),this.state=it.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(n),this.state=it.PAN}break;default:this.state=it.NONE}this.state!==it.NONE&&this.dispatchEvent(Gd)}function Qw(n){switch(this.state){case it.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(n);break;case it.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(n);break;case it.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(n);break}}function eE(n){this.enabled===!1||this.enableZoom===!1||this.state!==it.NONE||(n.preventDefault(),this.dispatchEvent(Gd),this._handleMouseWheel(this._customWheelEvent(n)),this.dispatchEvent(i_))}function tE(n){this.enabled!==!1&&this._handleKeyDown(n)}function nE(n){switch(this._trackPointer(n),this._pointers.length){case 1:switch(this.touches.ONE){case as.ROTATE:if(this.enableRotate===!1){this.state=it.NONE;break}this._handleTouchStartRotate(n),this.state=it.TOUCH_ROTATE;break;case as.PAN:if(this.enablePan===!1){this.state=it.NONE;break}this._handleTouchStartPan(n),this.state=it.TOUCH_PAN;break;default:this.state=it.NONE}break;case 2:switch(this.touches.TWO){case as.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(n),this.state=it.TOUCH_DOLLY_PAN;break;case as.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(n),this.state=it.TOUCH_DOLLY_ROTATE;break;default:this.state=it.NONE}break;default:this.state=it.NONE}this.state!==it.NONE&&this.dispatchEvent(Gd)}function iE(n){switch(this._trackPointer(n),this.state){case it.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(n),this.update();break;case it.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(n),this.update();break;case it.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(n),this.update();break;case it.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(n),this.update();break;default:this.state=it.NONE}}function sE(n){this.enabled!==!1&&n.preventDefault()}function rE(n){n.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function oE(n){n.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var pi=20,Br=.5;function ii({azimuth:n,rise:e}){let[t,i]=[$t.degToRad(n),$t.degToRad(e)],s=Math.cos(i);return new A(Math.sin(t)*s,-Math.cos(t)*s,Math.sin(i))}function Hd(n){let{x:e,y:t,z:i}=n;return{azimuth:$t.radToDeg(Math.atan2(e,-t)),rise:$t.radToDeg(Math.atan2(i,Math.hypot(e,t)))}}function ma(n){return Math.tan($t.degToRad(n/2))}function s_(n,e,t){let i=(o,a)=>o+(a-o)*t,s=(o,a)=>o*(a/o)**t,r=((e.azimuth-n.azimuth)%360+540)%360-180;return{azimuth:n.azimuth+r*t,rise:i(n.rise,e.rise),target:n.target.map((o,a)=>i(o,e.target[a])),height:s(n.height,e.height),fov:s(n.fov,e.fov),close:e.close}}var aE=.06;function Wd(n){let e=n.clone().normalize(),t=new A(0,0,1).cross(e).normalize();return[t,e.clone().cross(t),e]}function jc(n,e,t,i){let s=Wd(e),[r,o,a]=s.map(y=>{let p=n.map(g=>g.dot(y));return(Math.min(...p)+Math.max(...p))/2}),l=ma(t),c=(y,p,g)=>{let[M,w]=[-1/0,-1/0];for(let b of n){let C=b.dot(y)-p,R=(b.dot(s[2])-a)*l;M=Math.max(M,C+R*g),w=Math.max(w,R*g-C)}return{half:(M+w)/2/g,shift:(M-w)/2}},h=1-2*aE,f=c(s[0],r,h*i),d=c(s[1],o,h),u=Math.max(f.half,d.half);return{target:new A().addScaledVector(s[0],r+f.shift).addScaledVector(s[1],o+d.shift).addScaledVector(s[2],a),height:u}}function Xd(n,e,t){if(n.close)return n;let i=jc(e,ii(n),n.fov,t),s=new A(...n.target).sub(i.target);return{...n,target:s.toArray(),height:n.height/i.height}}function qd(n,e,t){if(n.close)return n;let i=jc(e,ii(n),n.fov,t),s=new A(...n.target).add(i.target);return{...n,target:s.toArray(),height:n.height*i.height}}var kr=Br/2,r_=89.999,zr={corner:{azimuth:-24,rise:14,fov:pi},front:{azimuth:0,rise:0,fov:kr},back:{azimuth:180,rise:0,fov:kr},left:{azimuth:-90,rise:0,fov:kr},right:{azimuth:90,rise:0,fov:kr},above:{azimuth:0,rise:r_,fov:kr},below:{azimuth:0,rise:-r_,fov:kr}};var lE=.35,cE=.25,o_=89.9,hE=4,uE=.001,a_=1e-6,Qc=class{controls;moved=()=>{};rested=()=>{};pose=null;wide=new cn(pi);flat=new Ds;points=[];aspect=1;glide=null;own=!1;begun=null;widens=!1;constructor(e){this.wide.up.set(0,0,1),this.flat.up.set(0,0,1),this.controls=new Jc(this.wide,e),this.controls.zoomToCursor=!0,this.controls.mouseButtons={LEFT:kn.ROTATE,MIDDLE:kn.PAN,RIGHT:kn.PAN},this.controls.addEventListener("change",()=>{this.own||this.handled()}),this.controls.addEventListener("start",()=>this.glide=null),this.controls.addEventListener("end",()=>this.rest())}get camera(){return this.pose&&this.pose.fov<Br?this.flat:this.wide}resize(e){this.see(this.points,e)}see(e,t=this.aspect){let[i,s]=[this.points,this.aspect];if(e.length&&(this.points=e),this.aspect=t,!this.points.length)return;this.pose&&i.length&&(this.pose=this.kept(this.pose,i,s),this.glide&&(this.glide.from=this.kept(this.glide.from,i,s),this.glide.to=this.kept(this.glide.to,i,s)));let r=this.begun?qd(this.begun,this.points,t):this.whole(zr.corner);this.apply(this.pose??r)}restore(e){this.begun=e}view(e){this.go(this.whole(zr[e]))}frame(){this.pose&&this.go(this.whole(this.pose))}turn(e,t){if(!this.pose)return;let i=$t.clamp(this.pose.rise+t,-o_,o_);this.settle({...this.pose,azimuth:this.pose.azimuth+e,rise:i,fov:pi})}pan(e,t){if(!this.pose)return;let[i,s]=Wd(ii(this.pose)),r=new A(...this.pose.target).addScaledVector(i,-e*this.pose.height*2).addScaledVector(s,-t*this.pose.height*2);this.settle({...this.pose,target:r.toArray(),close:!0})}zoom(e){this.pose&&this.settle({...this.pose,height:this.pose.height/e,close:!0})}turnTo(e){this.pose&&this.go({...this.pose,...Hd(e),fov:pi})}step(e){if(this.glide){let{from:t,to:i}=this.glide,s=this.glide.gone=Math.min(1,this.glide.gone+e/lE);if(this.apply(s_(t,i,Zc(s))),s<1)return!0;this.glide=null,this.rest()}else if(this.pose&&this.widens){let t=(pi/Br)**(e/cE),i=Math.min(pi,Math.max(this.pose.fov,Br)*t);return this.widens=i<pi,this.apply({...this.pose,fov:i}),this.widens}return!1}go(e){if(this.pose){if(this.widens=!1,pa()){this.settle(e);return}this.glide={from:this.pose,to:e,gone:0},this.moved()}}settle(e){this.glide=null,this.apply(e),this.rest()}rest(){this.pose&&this.rested(Xd(this.pose,this.points,this.aspect))}whole({azimuth:e,rise:t,fov:i}){let{target:s,height:r}=jc(this.points,ii({azimuth:e,rise:t}),i,this.aspect);return{azimuth:e,rise:t,fov:i,target:s.toArray(),height:r,close:!1}}kept(e,t,i){return qd(Xd(e,t,i),this.points,this.aspect)}handled(){let e=this.read(),t=this.pose;if(!t)return;let i=Math.hypot(e.azimuth-t.azimuth,e.rise-t.rise)>uE,s=new A(...e.target).distanceTo(new A(...t.target)),r=Math.abs(e.height/t.height-1)>a_;e.close=t.close||r||s>a_*e.height,this.pose=e,i&&e.fov<pi&&(this.widens=!0),this.range(),this.moved()}read(){let{camera:e}=this,t=e.position.clone().sub(this.controls.target),i=e===this.flat?this.flat.top/this.flat.zoom:t.length()*ma(this.wide.fov);return{...Hd(t),target:this.controls.target.toArray(),height:i,fov:this.pose.fov,close:this.pose.close}}apply(e){this.pose=e;let{camera:t}=this,i=t===this.flat,s=e.height/ma(i?hE:e.fov);this.controls.target.set(...e.target),t.position.copy(ii(e)).multiplyScalar(s).add(this.controls.target),i?(this.flat.top=e.height,this.flat.bottom=-e.height,this.flat.right=e.height*this.aspect,this.flat.left=-this.flat.right,this.flat.zoom=1):(this.wide.fov=e.fov,this.wide.aspect=this.aspect),this.controls.object=t,this.range(),this.own=!0,this.controls.update(),this.own=!1,this.moved()}range(){let{camera:e}=this,t=e.position.distanceTo(this.controls.target),i=Math.max(...this.points.map(s=>s.distanceTo(this.controls.target)),1);e.near=e===this.flat?t-3*i:Math.max(t-3*i,t/100),e.far=t+4*i,e.updateProjectionMatrix()}};var dE=4,Yd=class extends un{isXRRenderTarget=!0;constructor(){super(1,1),this.texture.colorSpace=Xt}},eh=class{constructor(e){this.renderer=e;e.domElement.addEventListener("webglcontextrestored",()=>this.buffer=null)}renderer;sheet=new Yd;buffer=null;colours=null;depths=null;draw(e,t){if(!e)return t();let i=this.renderer.getContext(),[s,r]=[i.drawingBufferWidth,i.drawingBufferHeight];this.size(i,s,r),this.renderer.setRenderTarget(this.sheet),t();let{state:o}=this.renderer;o.bindFramebuffer(i.READ_FRAMEBUFFER,this.buffer),o.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.blitFramebuffer(0,0,s,r,0,0,s,r,i.COLOR_BUFFER_BIT,i.NEAREST),o.bindFramebuffer(i.READ_FRAMEBUFFER,null),this.renderer.setRenderTarget(null)}size(e,t,i){this.buffer&&this.sheet.width===t&&this.sheet.height===i||(this.sheet.setSize(t,i),this.buffer||(this.buffer=e.createFramebuffer(),this.colours=e.createRenderbuffer(),this.depths=e.createRenderbuffer(),this.renderer.setRenderTargetFramebuffer(this.sheet,this.buffer)),this.renderer.state.bindFramebuffer(e.FRAMEBUFFER,this.buffer),this.hold(e,e.COLOR_ATTACHMENT0,e.RGBA8,this.colours),this.hold(e,e.DEPTH_ATTACHMENT,e.DEPTH_COMPONENT24,this.depths))}hold(e,t,i,s){let{width:r,height:o}=this.sheet;e.bindRenderbuffer(e.RENDERBUFFER,s),e.renderbufferStorageMultisample(e.RENDERBUFFER,dE,i,r,o),e.framebufferRenderbuffer(e.FRAMEBUFFER,t,e.RENDERBUFFER,s)}};var fE=new A(-.5,-1,1.25).normalize(),pE=2,l_={from:.9,to:5},mE=8,c_=4,gE=.5,_E=.3,zs=192,vE=160,yE=30,xE=25,th=class{sun=new Ko(16777215,2);floor;contact;soft=document.createElement("canvas");texture;stale=!1;constructor(e){e.add(new $o(16777215,14209220,2.35)),this.sun.castShadow=!0,this.sun.shadow.mapSize.set(1024,1024),this.sun.shadow.autoUpdate=!1,this.sun.shadow.radius=4,this.sun.shadow.intensity=.85,this.sun.shadow.normalBias=5,this.sun.shadow.bias=-5e-4,e.add(this.sun,this.sun.target),this.floor=new yt(new ns(1,1),new Ho({opacity:.13})),this.floor.receiveShadow=!0,this.soft.width=this.soft.height=zs,this.texture=new Oo(this.soft),this.contact=new yt(new ns(1,1),new Tr({map:this.texture,transparent:!0,depthWrite:!1})),this.floor.renderOrder=this.contact.renderOrder=-1,e.add(this.floor,this.contact)}light(e,t){if(!t.length)return;let{center:i,radius:s}=new Pn().setFromPoints([...t]);this.sun.target.position.copy(i),this.sun.position.copy(i).addScaledVector(fE,pE*s);let{camera:r}=this.sun.shadow;r.left=r.bottom=-s,r.right=r.top=s,r.near=l_.from*s,r.far=l_.to*s,r.updateProjectionMatrix(),this.renew();let o=Math.min(...t.map(a=>a.z));this.floor.position.set(i.x,i.y,o-gE),this.floor.scale.setScalar(mE*s),this.contact.position.set(i.x,i.y,o-_E),this.contact.scale.setScalar(c_*s),this.darken(e,i,c_*s,o)}renew(){this.stale=!0}shade(e,t){this.floor.visible=!t,!(!e||!this.stale)&&(this.stale=!1,this.sun.shadow.needsUpdate=!0)}darken(e,t,i,s){let r=this.soft.getContext("2d");r.clearRect(0,0,zs,zs);let o=zs/i,a=4*zs;r.shadowOffsetX=a;for(let l of e){if(!l.group.visible)continue;let{min:c,max:h}=l.box.clone().applyMatrix4(l.group.matrix),f=c.z-s;f>vE||(r.shadowBlur=2*(yE+f)*o,r.shadowColor=`rgba(40, 32, 24, ${.5/(1+f/xE)})`,r.fillRect((c.x-t.x)*o+zs/2-a,zs/2-(h.y-t.y)*o,(h.x-c.x)*o,(h.y-c.y)*o))}this.texture.needsUpdate=!0}};function Vs(n){return getComputedStyle(document.documentElement).getPropertyValue(`--${n}`).trim()}var SE=.13,bE=.28,ME=.55,h_=.72,wE=.6,nh=class{constructor(e){this.clipping=e}clipping;paper=new Re(Vs("paper"));inks=new Map;dropped=[];of(e){let t={color:e.colour,transparent:e.clear,opacity:e.clear?bE:1,depthWrite:!e.clear,clippingPlanes:this.clipping,clipShadows:!0,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1},i=e.metal?new Wo({...t,roughness:e.roughness,metalness:ME}):new Xo(t),s={value:0};return i.onBeforeCompile=r=>{Object.assign(r.uniforms,{pale:s,paper:{value:this.paper}}),r.fragmentShader=r.fragmentShader.replace("#include <common>",`#include <common>
${TE}`).replace("#include <dithering_fragment>",AE)},{material:i,pale:s}}drop(e){this.dropped.push(e)}release(){for(let{material:e}of this.dropped)e.dispose();this.dropped=[]}ink(e){let t=this.inks.get(e);if(!t){let i=new Re(e).multiplyScalar(SE),s=new Re(...EE(i,this.paper,wE));t={plain:this.line(i),pale:this.line(s)},this.inks.set(e,t)}return t}keep(e){for(let[t,i]of this.inks)e.has(t)||(i.plain.dispose(),i.pale.dispose(),this.inks.delete(t))}line(e){return new ui({color:e,clippingPlanes:this.clipping})}};function EE(n,e,t){let[i,s]=[n.clone().convertLinearToSRGB(),e.clone().convertLinearToSRGB()],{r,g:o,b:a}=i.lerp(s,t).convertSRGBToLinear();return[r,o,a]}var TE=`
uniform float pale;
uniform vec3 paper;
`,AE=`
gl_FragColor.rgb = mix(gl_FragColor.rgb, sRGBTransferOETF(vec4(paper, 1.0)).rgb, pale);
#include <dithering_fragment>
`;var RE=.3,u_=.35,CE=90,d_=1,ih=class{constructor(e){this.pieces=e}pieces;moves={};share=0;motions=[];stands=new Map;get inside(){return this.share>0||[...this.stands.values()].some(e=>$d(e)>0)}pull(e,t){this.moves=e,this.share=t}swing(e,t){this.motions=e;let i=new Set(e.map(s=>s.label));for(let s of this.stands.keys())i.has(s)||this.stands.delete(s);for(let s of e){let r=t.has(s.label)?this.wholly(s,t):0,o=this.stands.get(s.label);o?.to!==r&&this.stands.set(s.label,{from:o?$d(o):0,to:r,gone:0})}}step(e){let t=[...this.stands.values()].filter(i=>i.gone<1);for(let i of t)i.gone=Math.min(1,i.gone+e/RE);return t.length>0}place(){for(let e of this.pieces.values()){let[t,i,s]=this.moved(e.ref);e.group.matrix.makeTranslation(t,i,s).multiply(e.home)}for(let e of this.motions){let t=this.stands.get(e.label),i=t?$d(t):0;i>0&&this.open(e,i)}}open(e,t){let[i,s]=e.hinge,r=new Ke;if(i===void 0||s===void 0){let[o,a,l]=e.travel;r.makeTranslation(o*t,a*t,l*t)}else{let[o,a]=this.moved(this.hung(e,i,s)),l=Math.sign(e.angle)*Math.min(Math.abs(e.angle),CE),c=new A(i+o,s+a,0);r.makeTranslation(c).multiply(new Ke().makeRotationZ($t.degToRad(l)*t)).multiply(new Ke().makeTranslation(c.negate()))}for(let o of e.refs)this.pieces.get(o)?.group.matrix.premultiply(r)}hung(e,t,i){let s=r=>{let o=this.pieces.get(r);if(!o)return 1/0;let a=o.box.getCenter(new A).applyMatrix4(o.home);return Math.hypot(a.x-t,a.y-i)};return e.refs.reduce((r,o)=>s(o)<s(r)?o:r)}moved(e){let[t,i,s]=this.moves[e]??[0,0,0];return[t*this.share,i*this.share,s*this.share]}wholly(e,t){if(e.hinge.length)return 1;let i=this.motions.filter(r=>t.has(r.label)&&this.stacked(r,e)).sort((r,o)=>this.height(o)-this.height(r)),s=i.indexOf(e);return i.length<2?1:u_+(1-u_)*s/(i.length-1)}stacked(e,t){let[i,s]=this.across(e),[r,o]=this.across(t);return!e.hinge.length&&i<o&&r<s}across(e){let t=this.pieces.get(e.refs[0]);if(!t)return[0,0];let{min:i,max:s}=t.box.clone().applyMatrix4(t.home);return[i.x+d_,s.x-d_]}height(e){let t=this.pieces.get(e.refs[0]);return t?new A().setFromMatrixPosition(t.home).z:0}};function $d({from:n,to:e,gone:t}){return n+(e-n)*Zc(t)}de.line={worldUnits:{value:1},linewidth:{value:1},resolution:{value:new Ee},dashOffset:{value:0},dashScale:{value:1},dashSize:{value:1},gapSize:{value:1}};fn.line={uniforms:ca.merge([de.common,de.fog,de.line]),vertexShader:`
		#include <common>
		#include <color_pars_vertex>
		#include <fog_pars_vertex>
		#include <logdepthbuf_pars_vertex>
		#include <clipping_planes_pars_vertex>

		uniform float linewidth;
		uniform vec2 resolution;

		attribute vec3 instanceStart;
		attribute vec3 instanceEnd;

		attribute vec3 instanceColorStart;
		attribute vec3 instanceColorEnd;

		#ifdef WORLD_UNITS

			varying vec4 worldPos;
			varying vec3 worldStart;
			varying vec3 worldEnd;

			#ifdef USE_DASH

				varying vec2 vUv;

			#endif

		#else

			varying vec2 vUv;

		#endif

		#ifdef USE_DASH

			uniform float dashScale;
			attribute float instanceDistanceStart;
			attribute float instanceDistanceEnd;
			varying float vLineDistance;

		#endif

		float trimSegmentAlpha( const in vec4 start, const in vec4 end ) {

			// compute the interpolation factor needed to trim the segment so it terminates
			// between the camera plane and the near plane

			// conservative estimate of the near plane
			float a = projectionMatrix[ 2 ][ 2 ]; // 3nd entry in 3th column
			float b = projectionMatrix[ 3 ][ 2 ]; // 3nd entry in 4th column

			// we need different nearEstimate formula for reversed and default depth buffer
			// a is positive with a reversed depth buffer so it can be used for controlling the code flow
			float nearEstimate = ( a > 0.0 ) ? ( - b / ( a + 1.0 ) ) : ( - 0.5 * b / a );

			return ( nearEstimate - start.z ) / ( end.z - start.z );

		}

		void main() {

			#ifdef USE_COLOR

				vColor.xyz = ( position.y < 0.5 ) ? instanceColorStart : instanceColorEnd;

			#endif

			float aspect = resolution.x / resolution.y;

			// camera space
			vec4 start = modelViewMatrix * vec4( instanceStart, 1.0 );
			vec4 end = modelViewMatrix * vec4( instanceEnd, 1.0 );

			#ifdef USE_DASH

				float lineDistanceStart = dashScale * instanceDistanceStart;
				float lineDistanceEnd = dashScale * instanceDistanceEnd;

			#endif

			#ifdef WORLD_UNITS

				worldStart = start.xyz;
				worldEnd = end.xyz;

			#else

				vUv = uv;

			#endif

			// special case for perspective projection, and segments that terminate either in, or behind, the camera plane
			// clearly the gpu firmware has a way of addressing this issue when projecting into ndc space
			// but we need to perform ndc-space calculations in the shader, so we must address this issue directly
			// perhaps there is a more elegant solution -- WestLangley

			bool perspective = ( projectionMatrix[ 2 ][ 3 ] == - 1.0 ); // 4th entry in the 3rd column

			if ( perspective ) {

				if ( start.z < 0.0 && end.z >= 0.0 ) {

					float alpha = trimSegmentAlpha( start, end );
					end.xyz = mix( start.xyz, end.xyz, alpha );

					#ifdef USE_DASH

						lineDistanceEnd = mix( lineDistanceStart, lineDistanceEnd, alpha );

					#endif

				} else if ( end.z < 0.0 && start.z >= 0.0 ) {

					float alpha = trimSegmentAlpha( end, start );
					start.xyz = mix( end.xyz, start.xyz, alpha );

					#ifdef USE_DASH

						lineDistanceStart = mix( lineDistanceEnd, lineDistanceStart, alpha );

					#endif

				}

			}

			#ifdef USE_DASH

				vLineDistance = ( position.y < 0.5 ) ? lineDistanceStart : lineDistanceEnd;
				vUv = uv;

			#endif

			// clip space
			vec4 clipStart = projectionMatrix * start;
			vec4 clipEnd = projectionMatrix * end;

			// ndc space
			vec3 ndcStart = clipStart.xyz / clipStart.w;
			vec3 ndcEnd = clipEnd.xyz / clipEnd.w;

			// direction
			vec2 dir = ndcEnd.xy - ndcStart.xy;

			// account for clip-space aspect ratio
			dir.x *= aspect;
			dir = normalize( dir );

			#ifdef WORLD_UNITS

				vec3 worldDir = normalize( end.xyz - start.xyz );
				vec3 tmpFwd = perspective ? normalize( mix( start.xyz, end.xyz, 0.5 ) ) : vec3( 0.0, 0.0, - 1.0 );
				vec3 worldUp = normalize( cross( worldDir, tmpFwd ) );
				vec3 worldFwd = cross( worldDir, worldUp );
				worldPos = position.y < 0.5 ? start: end;

				// height offset
				float hw = linewidth * 0.5;
				worldPos.xyz += position.x < 0.0 ? hw * worldUp : - hw * worldUp;

				// don't extend the line if we're rendering dashes because we
				// won't be rendering the endcaps
				#ifndef USE_DASH

					// cap extension
					worldPos.xyz += position.y < 0.5 ? - hw * worldDir : hw * worldDir;

					// add width to the box
					worldPos.xyz += worldFwd * hw;

					// endcaps
					if ( position.y > 1.0 || position.y < 0.0 ) {

						worldPos.xyz -= worldFwd * 2.0 * hw;

					}

				#endif

				// project the worldpos
				vec4 clip = projectionMatrix * worldPos;

				// shift the depth of the projected points so the line
				// segments overlap neatly
				vec3 clipPose = ( position.y < 0.5 ) ? ndcStart : ndcEnd;

				// only shift the depth of vertices in front of the camera (#35137)
				if ( clip.w > 0.0 ) clip.z = clipPose.z * clip.w;

			#else

				vec2 offset = vec2( dir.y, - dir.x );
				// undo aspect ratio adjustment
				dir.x /= aspect;
				offset.x /= aspect;

				// sign flip
				if ( position.x < 0.0 ) offset *= - 1.0;

				// endcaps
				if ( position.y < 0.0 ) {

					offset += - dir;

				} else if ( position.y > 1.0 ) {

					offset += dir;

				}

				// adjust for linewidth
				offset *= linewidth;

				// adjust for clip-space to screen-space conversion // maybe resolution should be based on viewport ...
				offset /= resolution.y;

				// select end
				vec4 clip = ( position.y < 0.5 ) ? clipStart : clipEnd;

				// back to clip space
				offset *= clip.w;

				clip.xy += offset;

			#endif

			gl_Position = clip;

			vec4 mvPosition = ( position.y < 0.5 ) ? start : end; // this is an approximation

			#include <logdepthbuf_vertex>
			#include <clipping_planes_vertex>
			#include <fog_vertex>

		}
		`,fragmentShader:`
		uniform vec3 diffuse;
		uniform float opacity;
		uniform float linewidth;

		#ifdef USE_DASH

			uniform float dashOffset;
			uniform float dashSize;
			uniform float gapSize;

		#endif

		varying float vLineDistance;

		#ifdef WORLD_UNITS

			varying vec4 worldPos;
			varying vec3 worldStart;
			varying vec3 worldEnd;

			#ifdef USE_DASH

				varying vec2 vUv;

			#endif

		#else

			varying vec2 vUv;

		#endif

		#include <common>
		#include <color_pars_fragment>
		#include <fog_pars_fragment>
		#include <logdepthbuf_pars_fragment>
		#include <clipping_planes_pars_fragment>

		vec2 closestLineToLine(vec3 p1, vec3 p2, vec3 p3, vec3 p4) {

			float mua;
			float mub;

			vec3 p13 = p1 - p3;
			vec3 p43 = p4 - p3;

			vec3 p21 = p2 - p1;

			float d1343 = dot( p13, p43 );
			float d4321 = dot( p43, p21 );
			float d1321 = dot( p13, p21 );
			float d4343 = dot( p43, p43 );
			float d2121 = dot( p21, p21 );

			float denom = d2121 * d4343 - d4321 * d4321;

			float numer = d1343 * d4321 - d1321 * d4343;

			mua = numer / denom;
			mua = clamp( mua, 0.0, 1.0 );
			mub = ( d1343 + d4321 * ( mua ) ) / d4343;
			mub = clamp( mub, 0.0, 1.0 );

			return vec2( mua, mub );

		}

		void main() {

			float alpha = opacity;
			vec4 diffuseColor = vec4( diffuse, alpha );

			#include <clipping_planes_fragment>

			#ifdef USE_DASH

				if ( vUv.y < - 1.0 || vUv.y > 1.0 ) discard; // discard endcaps

				if ( mod( vLineDistance + dashOffset, dashSize + gapSize ) > dashSize ) discard; // todo - FIX

			#endif

			#ifdef WORLD_UNITS

				float len;

				if ( isOrthographic ) {

					// View rays are parallel to the z axis so the distance reduces to camera-space XY
					vec2 lineDir = worldEnd.xy - worldStart.xy;
					float t = clamp( dot( worldPos.xy - worldStart.xy, lineDir ) / dot( lineDir, lineDir ), 0.0, 1.0 );
					len = length( worldStart.xy + lineDir * t - worldPos.xy );

				} else {

					// Find the closest points on the view ray and the line segment
					vec3 rayEnd = normalize( worldPos.xyz ) * 1e5;
					vec3 lineDir = worldEnd - worldStart;
					vec2 params = closestLineToLine( worldStart, worldEnd, vec3( 0.0, 0.0, 0.0 ), rayEnd );

					vec3 p1 = worldStart + lineDir * params.x;
					vec3 p2 = rayEnd * params.y;
					vec3 delta = p1 - p2;
					len = length( delta );

				}

				float norm = len / linewidth;

				#ifndef USE_DASH

					#ifdef USE_ALPHA_TO_COVERAGE

						float dnorm = fwidth( norm );
						alpha = 1.0 - smoothstep( 0.5 - dnorm, 0.5 + dnorm, norm );

					#else

						if ( norm > 0.5 ) {

							discard;

						}

					#endif

				#endif

			#else

				#ifdef USE_ALPHA_TO_COVERAGE

					// artifacts appear on some hardware if a derivative is taken within a conditional
					float a = vUv.x;
					float b = ( vUv.y > 0.0 ) ? vUv.y - 1.0 : vUv.y + 1.0;
					float len2 = a * a + b * b;
					float dlen = fwidth( len2 );

					if ( abs( vUv.y ) > 1.0 ) {

						alpha = 1.0 - smoothstep( 1.0 - dlen, 1.0 + dlen, len2 );

					}

				#else

					if ( abs( vUv.y ) > 1.0 ) {

						float a = vUv.x;
						float b = ( vUv.y > 0.0 ) ? vUv.y - 1.0 : vUv.y + 1.0;
						float len2 = a * a + b * b;

						if ( len2 > 1.0 ) discard;

					}

				#endif

			#endif

			#include <logdepthbuf_fragment>
			#include <color_fragment>

			gl_FragColor = vec4( diffuseColor.rgb, alpha );

			#include <tonemapping_fragment>
			#include <colorspace_fragment>
			#include <fog_fragment>
			#include <premultiplied_alpha_fragment>

		}
		`};var Gs=class extends vn{constructor(e){super({type:"LineMaterial",uniforms:ca.clone(fn.line.uniforms),vertexShader:fn.line.vertexShader,fragmentShader:fn.line.fragmentShader,clipping:!0}),this.isLineMaterial=!0,this.setValues(e)}get color(){return this.uniforms.diffuse.value}set color(e){this.uniforms.diffuse.value=e}get worldUnits(){return"WORLD_UNITS"in this.defines}set worldUnits(e){e===!0!==this.worldUnits&&(this.needsUpdate=!0),e===!0?this.defines.WORLD_UNITS="":delete this.defines.WORLD_UNITS}get linewidth(){return this.uniforms.linewidth.value}set linewidth(e){this.uniforms.linewidth&&(this.uniforms.linewidth.value=e)}get dashed(){return"USE_DASH"in this.defines}set dashed(e){e===!0!==this.dashed&&(this.needsUpdate=!0),e===!0?this.defines.USE_DASH="":delete this.defines.USE_DASH}get dashScale(){return this.uniforms.dashScale.value}set dashScale(e){this.uniforms.dashScale.value=e}get dashSize(){return this.uniforms.dashSize.value}set dashSize(e){this.uniforms.dashSize.value=e}get dashOffset(){return this.uniforms.dashOffset.value}set dashOffset(e){this.uniforms.dashOffset.value=e}get gapSize(){return this.uniforms.gapSize.value}set gapSize(e){this.uniforms.gapSize.value=e}get opacity(){return this.uniforms.opacity.value}set opacity(e){this.uniforms&&(this.uniforms.opacity.value=e)}get resolution(){return this.uniforms.resolution.value}set resolution(e){this.uniforms.resolution.value.copy(e)}get alphaToCoverage(){return"USE_ALPHA_TO_COVERAGE"in this.defines}set alphaToCoverage(e){this.defines&&(e===!0!==this.alphaToCoverage&&(this.needsUpdate=!0),e===!0?this.defines.USE_ALPHA_TO_COVERAGE="":delete this.defines.USE_ALPHA_TO_COVERAGE)}};var f_=new Cn,sh=new A,Vr=class extends Jo{constructor(){super(),this.isLineSegmentsGeometry=!0,this.type="LineSegmentsGeometry";let e=[-1,2,0,1,2,0,-1,1,0,1,1,0,-1,0,0,1,0,0,-1,-1,0,1,-1,0],t=[-1,2,1,2,-1,1,1,1,-1,-1,1,-1,-1,-2,1,-2],i=[0,2,1,2,3,1,2,4,3,4,5,3,4,6,5,6,7,5];this.setIndex(i),this.setAttribute("position",new kt(e,3)),this.setAttribute("uv",new kt(t,2))}applyMatrix4(e){let t=this.attributes.instanceStart,i=this.attributes.instanceEnd;return t!==void 0&&(t.applyMatrix4(e),i.applyMatrix4(e),t.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this}setPositions(e){let t;e instanceof Float32Array?t=e:Array.isArray(e)&&(t=new Float32Array(e));let i=new os(t,6,1);return this.setAttribute("instanceStart",new Jn(i,3,0)),this.setAttribute("instanceEnd",new Jn(i,3,3)),this.instanceCount=this.attributes.instanceStart.count,this.computeBoundingBox(),this.computeBoundingSphere(),this}setColors(e){let t;e instanceof Float32Array?t=e:Array.isArray(e)&&(t=new Float32Array(e));let i=new os(t,6,1);return this.setAttribute("instanceColorStart",new Jn(i,3,0)),this.setAttribute("instanceColorEnd",new Jn(i,3,3)),this}fromWireframeGeometry(e){return this.setPositions(e.attributes.position.array),this}fromEdgesGeometry(e){return this.setPositions(e.attributes.position.array),this}fromMesh(e){return this.fromWireframeGeometry(new Go(e.geometry)),this}fromLineSegments(e){let t=e.geometry;return this.setPositions(t.attributes.position.array),this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Cn);let e=this.attributes.instanceStart,t=this.attributes.instanceEnd;e!==void 0&&t!==void 0&&(this.boundingBox.setFromBufferAttribute(e),f_.setFromBufferAttribute(t),this.boundingBox.union(f_))}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new Pn),this.boundingBox===null&&this.computeBoundingBox();let e=this.attributes.instanceStart,t=this.attributes.instanceEnd;if(e!==void 0&&t!==void 0){let i=this.boundingSphere.center;this.boundingBox.getCenter(i);let s=0;for(let r=0,o=e.count;r<o;r++)sh.fromBufferAttribute(e,r),s=Math.max(s,i.distanceToSquared(sh)),sh.fromBufferAttribute(t,r),s=Math.max(s,i.distanceToSquared(sh));this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&console.error("THREE.LineSegmentsGeometry.computeBoundingSphere(): Computed radius is NaN. The instanced position data is likely to have NaN values.",this)}}toJSON(){}};var Zd=new tt,p_=new A,m_=new A,Zt=new tt,Kt=new tt,mi=new tt,Kd=new A,Jd=new Ke,Jt=new Ns,g_=new A,rh=new Cn,oh=new Pn,gi=new tt,_i,Hs;function __(n,e,t){return gi.set(0,0,-e,1).applyMatrix4(n.projectionMatrix),gi.multiplyScalar(1/gi.w),gi.x=Hs/t.width,gi.y=Hs/t.height,gi.applyMatrix4(n.projectionMatrixInverse),gi.multiplyScalar(1/gi.w),Math.abs(Math.max(gi.x,gi.y))}function PE(n,e){let t=n.matrixWorld,i=n.geometry,s=i.attributes.instanceStart,r=i.attributes.instanceEnd,o=Math.min(i.instanceCount,s.count);for(let a=0,l=o;a<l;a++){Jt.start.fromBufferAttribute(s,a),Jt.end.fromBufferAttribute(r,a),Jt.applyMatrix4(t);let c=new A,h=new A;_i.distanceSqToSegment(Jt.start,Jt.end,h,c),h.distanceTo(c)<Hs*.5&&e.push({point:h,pointOnLine:c,distance:_i.origin.distanceTo(h),object:n,face:null,faceIndex:a,uv:null,uv1:null})}}function IE(n,e,t){let i=e.projectionMatrix,r=n.material.resolution,o=n.matrixWorld,a=n.geometry,l=a.attributes.instanceStart,c=a.attributes.instanceEnd,h=Math.min(a.instanceCount,l.count),f=-e.near;_i.at(1,mi),mi.w=1,mi.applyMatrix4(e.matrixWorldInverse),mi.applyMatrix4(i),mi.multiplyScalar(1/mi.w),mi.x*=r.x/2,mi.y*=r.y/2,mi.z=0,Kd.copy(mi),Jd.multiplyMatrices(e.matrixWorldInverse,o);for(let d=0,u=h;d<u;d++){if(Zt.fromBufferAttribute(l,d),Kt.fromBufferAttribute(c,d),Zt.w=1,Kt.w=1,Zt.applyMatrix4(Jd),Kt.applyMatrix4(Jd),Zt.z>f&&Kt.z>f)continue;if(Zt.z>f){let w=Zt.z-Kt.z,b=(Zt.z-f)/w;Zt.lerp(Kt,b)}else if(Kt.z>f){let w=Kt.z-Zt.z,b=(Kt.z-f)/w;Kt.lerp(Zt,b)}Zt.applyMatrix4(i),Kt.applyMatrix4(i),Zt.multiplyScalar(1/Zt.w),Kt.multiplyScalar(1/Kt.w),Zt.x*=r.x/2,Zt.y*=r.y/2,Kt.x*=r.x/2,Kt.y*=r.y/2,Jt.start.copy(Zt),Jt.start.z=0,Jt.end.copy(Kt),Jt.end.z=0;let y=Jt.closestPointToPointParameter(Kd,!0);Jt.at(y,g_);let p=$t.lerp(Zt.z,Kt.z,y),g=p>=-1&&p<=1,M=Kd.distanceTo(g_)<Hs*.5;if(g&&M){Jt.start.fromBufferAttribute(l,d),Jt.end.fromBufferAttribute(c,d),Jt.start.applyMatrix4(o),Jt.end.applyMatrix4(o);let w=new A,b=new A;_i.distanceSqToSegment(Jt.start,Jt.end,b,w),t.push({point:b,pointOnLine:w,distance:_i.origin.distanceTo(b),object:n,face:null,faceIndex:d,uv:null,uv1:null})}}}var ah=class extends yt{constructor(e=new Vr,t=new Gs({color:Math.random()*16777215})){super(e,t),this.isLineSegments2=!0,this.type="LineSegments2"}computeLineDistances(){let e=this.geometry,t=e.attributes.instanceStart,i=e.attributes.instanceEnd,s=new Float32Array(2*t.count);for(let o=0,a=0,l=t.count;o<l;o++,a+=2)p_.fromBufferAttribute(t,o),m_.fromBufferAttribute(i,o),s[a]=a===0?0:s[a-1],s[a+1]=s[a]+p_.distanceTo(m_);let r=new os(s,2,1);return e.setAttribute("instanceDistanceStart",new Jn(r,1,0)),e.setAttribute("instanceDistanceEnd",new Jn(r,1,1)),this}raycast(e,t){let i=this.material.worldUnits,s=e.camera;if(s===null&&!i&&console.error('LineSegments2: "Raycaster.camera" needs to be set in order to raycast against LineSegments2 while worldUnits is set to false.'),i===!1&&(this.material.resolution.x===0||this.material.resolution.y===0))return;let r=e.params.Line2!==void 0&&e.params.Line2.threshold||0;_i=e.ray;let o=this.matrixWorld,a=this.geometry,l=this.material;Hs=l.linewidth+r,a.boundingSphere===null&&a.computeBoundingSphere(),oh.copy(a.boundingSphere).applyMatrix4(o);let c;if(i)c=Hs*.5;else{let f=Math.max(s.near,oh.distanceToPoint(_i.origin));c=__(s,f,l.resolution)}if(oh.radius+=c,_i.intersectsSphere(oh)===!1)return;a.boundingBox===null&&a.computeBoundingBox(),rh.copy(a.boundingBox).applyMatrix4(o);let h;if(i)h=Hs*.5;else{let f=Math.max(s.near,rh.distanceToPoint(_i.origin));h=__(s,f,l.resolution)}rh.expandByScalar(h),_i.intersectsBox(rh)!==!1&&(i?PE(this,t):IE(this,s,t))}onBeforeRender(e){let t=this.material.uniforms;t&&t.resolution&&(e.getViewport(Zd),this.material.uniforms.resolution.value.set(Zd.z,Zd.w))}};var v_={selected:736657,lit:9053440,changed:3104031},LE={selected:3,lit:3,changed:2.5},DE=1.2,NE=6,UE=4,lh=class{drawn=new Map;inks;constructor(e){let t=i=>[new Gs({color:v_[i],linewidth:LE[i],clippingPlanes:e}),new Gs({color:v_[i],linewidth:DE,dashed:!0,dashSize:NE,gapSize:UE,depthTest:!1,transparent:!0,opacity:.75})];this.inks={selected:t("selected"),lit:t("lit"),changed:t("changed")}}scale(e){for(let[,t]of Object.values(this.inks))t.dashScale=1/e}draw(e,t){for(let[i,{meant:s,made:r,lines:o}]of this.drawn)if(!(t.get(i)===s&&e.get(i)?.made===r)){for(let a of o)a.removeFromParent();o[0].geometry.dispose(),this.drawn.delete(i)}for(let[i,s]of t){let r=e.get(i);if(!r||this.drawn.has(i))continue;let o=this.outline(r,s);this.drawn.set(i,{meant:s,made:r.made,lines:o})}}outline(e,t){let i=new Vr().setPositions(e.edges.getAttribute("position").array),s=this.inks[t].map(r=>new ah(i,r));return s[1].computeLineDistances(),s.forEach((r,o)=>{r.raycast=()=>{},r.renderOrder=2-o}),e.group.add(...s),s}};var ch=class{constructor(e,t){this.renderer=e;this.again=t;e.setPixelRatio(this.fine)}renderer;again;fine=Math.min(devicePixelRatio,2);slow=!1;last=0;timer=0;hurried=!1;measured=!1;coarse=!1;frame(e){let t=e-this.last,i=this.timer!==0;this.last=e,i&&t>45&&(this.slow=!0),i&&t<14&&(this.slow=!1),this.coarse=this.slow&&(i||this.hurried),this.hurried=!1,this.ratio(this.coarse?this.fine*.5:this.fine),clearTimeout(this.timer);let s=i?Math.min(Math.max(180,2*t),700):180;this.timer=window.setTimeout(()=>{this.timer=0,this.renderer.getPixelRatio()!==this.fine&&this.again()},s)}hurry(){this.hurried=!0}measure(e){if(this.measured)return e();this.measured=!0;let t=performance.now();e();let i=this.renderer.getContext();i.readPixels(0,0,1,1,i.RGBA,i.UNSIGNED_BYTE,new Uint8Array(4)),this.slow=performance.now()-t>45}finely(){this.coarse=!1,this.ratio(this.fine)}ratio(e){this.renderer.getPixelRatio()!==e&&this.renderer.setPixelRatio(e)}};var hh=class{constructor(e,t,i,s){this.from=s;this.ref=e.ref,this.layer=e.layer,this.made=jd(e,i),this.body=this.add(e.shape,e.surface,t),this.box=this.mesh.geometry.boundingBox,s.woods.dress(this.mesh.material,e,t.surfaces,this.box);for(let r of i)this.fittings.push({fitting:r,body:this.add(r.shape,r.surface,t)});this.group.matrixAutoUpdate=!1,this.place(e)}from;ref;group=new An;home=new Ke;box;layer;made;body;fittings=[];get mesh(){return this.body.solid}get edges(){return this.body.lines[0].geometry}moved(){return this.home.clone().invert().premultiply(this.group.matrix)}place(e){this.layer=e.layer,this.home.set(...e.matrix)}showFittings(e,t){for(let{fitting:i,body:s}of this.fittings){let r=e&&(t||!i.inner);s.solid.visible=r;for(let o of s.lines)o.visible=r}}showFine(e){for(let{fine:t,solid:i}of this.bodies())t&&(t.visible=e&&i.visible)}pale(e){for(let t of this.bodies()){t.look.pale.value=e?h_:0;let i=this.from.looks.ink(t.colour);for(let s of t.lines)s.material=e?i.pale:i.plain}}dispose(){this.group.removeFromParent();for(let e of this.bodies())this.from.looks.drop(e.look)}bodies(){return[this.body,...this.fittings.map(e=>e.body)]}add(e,t,i){let s=i.surfaces[t],{geometry:r,edges:o,fine:a}=this.from.shapes.get(e,i.shapes),l=this.from.looks.of(s),c=new yt(r,l.material);c.castShadow=!s.clear,c.receiveShadow=!0,c.userData.ref=this.ref;let h=this.from.looks.ink(s.colour).plain,f=[o,a].flatMap(d=>d?[new Li(d,h)]:[]);return this.group.add(c,...f),{solid:c,lines:f,fine:a?f[1]:null,look:l,colour:s.colour}}};function jd(n,e){let{shape:t,surface:i,grain:s,lie:r,edges:o}=n;return JSON.stringify([t,i,s,r,o,e])}var y_=7,uh=class{held=new Map;get(e,t){let i=this.held.get(e);return i||this.held.set(e,i=OE(t[e])),i}keep(e){for(let[t,i]of this.held)e.has(t)||(i.geometry.dispose(),i.edges.dispose(),i.fine?.dispose(),this.held.delete(t))}};function OE(n){let e=new Pt;e.setAttribute("position",new Bt(Qd(n.points),3)),e.setAttribute("normal",new Bt(Qd(n.normals),3)),e.setIndex(new Bt(new Uint32Array(S_(n.triangles).buffer),1)),e.computeBoundingBox();let[t,i]=FE(Qd(n.edges));return{geometry:e,edges:x_(t),fine:i.length?x_(i):null}}function FE(n){let[e,t]=[new Float32Array(n.length),new Float32Array(n.length)],[i,s]=[0,0];for(let r=0;r<n.length;r+=6){let o=n[r+3]-n[r],a=n[r+4]-n[r+1],l=n[r+5]-n[r+2],c=o*o+a*a+l*l<y_*y_;for(let h=r;h<r+6;h++)c?t[s++]=n[h]:e[i++]=n[h]}return[e.slice(0,i),t.slice(0,s)]}function x_(n){let e=new Pt;return e.setAttribute("position",new Bt(n,3)),e}function Qd(n){return new Float32Array(S_(n).buffer)}function S_(n){let e=atob(n),t=new Uint8Array(e.length);for(let i=0;i<e.length;i++)t[i]=e.charCodeAt(i);return t}var BE=["-x","+x","-y","+y"],Gr=new Ar(new Uint8Array([255,255,255,255]),1,1);Gr.needsUpdate=!0;var ef=class{face={value:Gr};edge={value:Gr};end={value:Gr};size={value:new A(1,1,1)};there={value:0};asked="";async show(e){if(this.asked===e.face)return;this.asked=e.face;let t=await Promise.all([e.face,e.edge,e.end].map(kE));this.asked===e.face&&(this.letGo(),[this.face.value,this.edge.value,this.end.value]=t,this.size.value.set(...e.size),this.there.value=1)}dispose(){this.asked="",this.there.value=0,this.letGo()}letGo(){for(let e of[this.face,this.edge,this.end])e.value!==Gr&&e.value.dispose(),e.value=Gr}},dh=class{woods=new Map;async show(e){let t=Object.entries(e).filter(([i])=>this.woods.has(i));await Promise.all(t.map(([i,s])=>this.of(i).show(s)))}dress(e,t,i,s){let r=this.of(t.surface),o=BE.map(d=>t.edges[d]),a=o.find(d=>d!==void 0)??t.surface,l=this.of(a),c=o.map(d=>new Re(d?i[d].colour:0)),h={woodFace:r.face,woodEdge:r.edge,woodEnd:r.end,woodSize:r.size,woodThere:r.there,woodLie:{value:new tt(...t.lie)},woodTurned:{value:t.grain==="width"},woodMean:{value:e.color.clone()},woodLow:{value:s.min},woodHigh:{value:s.max},bandEdge:l.edge,bandSize:l.size,bandThere:l.there,bandOn:{value:o.map(d=>d?d===a?2:1:0)},bandColour:{value:c}};o.some(Boolean)&&(e.defines={...e.defines,BANDED:""});let f=e.onBeforeCompile.bind(e);e.onBeforeCompile=(d,u)=>{f(d,u),Object.assign(d.uniforms,h),d.vertexShader=d.vertexShader.replace("#include <common>",`#include <common>
${b_}`).replace("#include <begin_vertex>",`#include <begin_vertex>
${zE}`),d.fragmentShader=d.fragmentShader.replace("#include <common>",`#include <common>
${b_}${VE}`).replace("#include <map_fragment>","diffuseColor.rgb *= wood();")}}keep(e){for(let[t,i]of this.woods)e.has(t)||(i.dispose(),this.woods.delete(t))}of(e){let t=this.woods.get(e);return t||this.woods.set(e,t=new ef),t}};async function kE(n){let e=new Image;e.src=n,await e.decode();let t=new qt(e);return t.colorSpace=Xt,t.wrapS=t.wrapT=yr,t.anisotropy=4,t.needsUpdate=!0,t}var b_=`
varying vec3 vPlace;
varying vec3 vFacing;
`,zE=`
vPlace = position;
vFacing = normal;
`,VE=`
uniform sampler2D woodFace, woodEdge, woodEnd, bandEdge;
uniform vec3 woodSize, woodMean, woodLow, woodHigh, bandSize;
uniform vec4 woodLie;
uniform float woodThere, bandThere;
uniform bool woodTurned;
uniform int bandOn[4];
uniform vec3 bandColour[4];

vec3 wood() {
  vec3 slopeX = dFdx(vPlace), slopeY = dFdy(vPlace), place = vPlace, facing = abs(vFacing);
  vec3 mean = max(woodMean, vec3(0.002));
#ifdef BANDED
  if (facing.z < max(facing.x, facing.y)) {
    int axis = facing.x > facing.y ? 0 : 1;
    bool high = vFacing[axis] > 0.0;
    int side = 2 * axis + (high ? 1 : 0);
    float beyond = high ? woodHigh[axis] : woodLow[axis];
    if (bandOn[side] > 0 && facing[axis] > 0.9 && abs(place[axis] - beyond) < 1.0) {
      int along = 1 - axis;
      vec3 band = bandColour[side];
      vec2 scale = bandSize.xz, at = vec2(place[along] + woodLie.y, place.z) / scale;
      if (bandOn[side] == 2 && bandThere > 0.5)
        band = textureGrad(bandEdge, at, vec2(slopeX[along], slopeX.z) / scale,
          vec2(slopeY[along], slopeY.z) / scale).rgb;
      return band / mean;
    }
  }
#endif
  if (woodThere < 0.5) return vec3(1.0);
  if (woodTurned) {
    slopeX = slopeX.yxz;
    slopeY = slopeY.yxz;
    place = place.yxz;
    facing = facing.yxz;
  }
  vec3 sign = vec3(woodLie.x, woodLie.z, 1.0) / woodSize;
  slopeX *= sign;
  slopeY *= sign;
  place = place * sign + vec3(woodLie.y, woodLie.w, 0.0) / woodSize;
  vec3 seen;
  if (facing.z >= max(facing.x, facing.y))
    seen = textureGrad(woodFace, place.xy, slopeX.xy, slopeY.xy).rgb;
  else if (facing.y > facing.x)
    seen = textureGrad(woodEdge, place.xz, slopeX.xz, slopeY.xz).rgb;
  else seen = textureGrad(woodEnd, place.yz, slopeX.yz, slopeY.yz).rgb;
  return seen / mean;
}
`;var GE=5,HE=4,fh=class{constructor(e){this.canvas=e;this.renderer=new Hc({canvas:e}),this.frame=new eh(this.renderer),this.pace=new ch(this.renderer,()=>this.draw()),this.renderer.shadowMap.enabled=!0,this.renderer.localClippingEnabled=!0,this.scene.background=new Re(this.looks.paper),this.eye=new Qc(e),this.eye.moved=()=>this.draw(),this.resize(),new ResizeObserver(()=>this.resize()).observe(e),e.addEventListener("webglcontextrestored",()=>this.stand())}canvas;scene=new Lo;renderer;eye;pieces=new Map;awaited=new Set;clipping=[];moved=new Set;drawing=new Set;shapes=new uh;looks=new nh(this.clipping);woods=new dh;moving=new ih(this.pieces);lamps=new th(this.scene);outlines=new lh(this.clipping);pace;frame;changes=new $c(()=>this.lightUp());moves={};motions=[];opened=new Set;hidden={layers:new Set,aside:new Set};lighting={refs:[],selected:null};around=[];asked=0;last=0;get camera(){return this.eye.camera}get controls(){return this.eye.controls}show(e){let t=!this.pieces.size;this.looks.release();let i=new Set(this.pieces.keys()),s=[],r=new Map;for(let a of e.fittings)r.set(a.ref,[...r.get(a.ref)??[],a]);for(let a of e.parts)i.delete(a.ref),this.put(a,e,r.get(a.ref)??[])&&s.push(a.ref);for(let a of i)this.pieces.get(a).dispose(),this.pieces.delete(a);this.woods.keep(new Set(e.parts.flatMap(a=>[a.surface,...Object.values(a.edges)])));let o=[...e.parts,...e.fittings];this.shapes.keep(new Set(o.map(({shape:a})=>a))),this.looks.keep(new Set(o.map(({surface:a})=>e.surfaces[a].colour))),this.motions=e.motions,this.pace.hurry(),this.swing(this.opened),this.changes.begin(t||pa()?[]:s),this.lightUp()}async clothe(e){await this.woods.show(e),this.draw()}pull(e,t){e&&(this.moves=e),this.moving.pull(this.moves,t),this.stand()}swing(e){this.opened=e,this.moving.swing(this.motions,e),pa()&&this.moving.step(1/0),this.stand()}hide(e,t=new Set){this.hidden={layers:e,aside:t},this.stand()}light(e,t){this.lighting={refs:e,selected:t},this.lightUp()}surround(e){this.around=e,this.stand()}view(e){this.eye.view(e)}draw(){this.asked||=requestAnimationFrame(e=>{let t=this.last?Math.min(.1,(e-this.last)/1e3):.016666666666666666;this.asked=0,this.moving.step(t)&&this.stand();let i=this.eye.step(t)||this.asked;this.last=i?e:0,this.pace.frame(e),this.render(),i&&this.draw()})}onDraw(e){return this.drawing.add(e),()=>this.drawing.delete(e)}onMove(e){return this.moved.add(e),()=>this.moved.delete(e)}cut(e){this.clipping.splice(0,this.clipping.length,...e),this.lamps.renew()}turn(e){this.eye.turnTo(e)}get resting(){return!this.asked&&!this.awaited.size}picture(){return this.pace.finely(),this.render(),this.canvas.toDataURL("image/png")}render(){let{coarse:e}=this.pace;!e&&this.changes.due()&&this.outline();let{height:t}=this.eye.pose??{height:1/0},i=2*t/this.canvas.clientHeight;for(let r of this.pieces.values())r.showFine(GE/i>HE);this.outlines.scale(i),this.scene.updateMatrixWorld(),this.camera.updateMatrixWorld();for(let r of this.drawing)r();this.lamps.shade(!e,this.clipping.length>0);let s=()=>this.frame.draw(!e,()=>this.renderer.render(this.scene,this.camera));this.pieces.size?this.pace.measure(s):s(),this.looks.release()}put(e,t,i){let s=this.pieces.get(e.ref);if(s?.made===jd(e,i))return s.place(e),!1;s?.dispose();let r=new hh(e,t,i,this);return this.pieces.set(e.ref,r),this.scene.add(r.group),!0}stand(){this.moving.place();let{layers:e,aside:t}=this.hidden,{inside:i}=this.moving;for(let r of this.pieces.values())r.group.visible=!e.has(r.layer)&&!t.has(r.ref),r.showFittings(!e.has("fittings"),i);let s=[...this.pieces.values()].filter(r=>r.group.visible).flatMap(r=>WE(r));this.lamps.light(this.pieces.values(),s),this.eye.see([...s,...this.around]);for(let r of this.moved)r();this.draw()}lightUp(){let{refs:e,selected:t}=this.lighting,i=new Set(e.filter(s=>this.pieces.has(s)));for(let s of this.pieces.values())s.pale(i.size>0&&!i.has(s.ref)&&s.ref!==t);this.outline(),this.draw()}outline(){let{refs:e,selected:t}=this.lighting,i=new Map(this.changes.outlined.map(s=>[s,"changed"]));for(let s of e)i.set(s,"lit");t&&i.set(t,"selected"),this.outlines.draw(this.pieces,i)}resize(){let{clientWidth:e,clientHeight:t}=this.canvas;!e||!t||(this.renderer.setSize(e,t,!1),this.eye.resize(e/t),this.draw())}};function WE(n){if(n.box.isEmpty())return[];let{min:e,max:t}=n.box,i=[e,t];return i.flatMap(({x:s})=>i.flatMap(({y:r})=>i.map(({z:o})=>new A(s,r,o).applyMatrix4(n.group.matrix))))}var XE=10129278;function M_(n){let e=new Li(new Pt,new ui({color:XE}));n.scene.add(e);let t=[Qe(()=>{e.geometry.dispose();let i=(be.value?.room??[]).flatMap(qE);e.geometry=new Pt().setFromPoints(i),n.draw()}),Qe(()=>{e.visible=!en.value.has("room"),n.draw()})];return()=>{t.forEach(i=>i()),e.removeFromParent(),e.geometry.dispose(),e.material.dispose()}}function qE(n){return n.slice(1).flatMap((e,t)=>[new A(...n[t]),new A(...e)])}var w_=new WeakMap;function us(n){let e=w_.get(n);return e||w_.set(n,e=YE(n)),e}function YE(n){let e=n.getAttribute("position"),t=Float32Array.from(e.array,h=>h+0),i=new Uint32Array(t.buffer),s=2**Math.ceil(Math.log2(2*e.count+1)),r=new Int32Array(s).fill(-1),o=[],a=[],l=new Uint32Array(e.count);for(let h=0;h<e.count;h++){let[f,d,u]=[i[3*h],i[3*h+1],i[3*h+2]],m=$E(f,d,u)&s-1;for(;r[m]>=0;m=m+1&s-1){let y=3*a[r[m]];if(i[y]===f&&i[y+1]===d&&i[y+2]===u)break}r[m]<0&&(r[m]=o.length,a.push(h),o.push(new A(t[3*h],t[3*h+1],t[3*h+2]))),l[h]=r[m]}let c=n.getIndex().array;return{points:o,triangles:Uint32Array.from(c,h=>l[h])}}function $E(n,e,t){let i=Math.imul(n,2654435761)^Math.imul(e,2246822507)^Math.imul(t,3266489909);return i=Math.imul(i^i>>>15,739982445),(i^i>>>13)>>>0}var ZE=.05,Bi=.001,KE=.99985,JE=-.9999999,jE=[.2,.5,.8];function E_(n,e){let{points:t,triangles:i}=us(n),s=new li,r=new A,o=[];for(let a=0;a<i.length;a+=3){let[l,c,h]=[0,1,2].map(u=>t[i[a+u]]);if(!QE(l,c,h,e)||(s.set(l,c,h),s.closestPointToPoint(e,r).distanceTo(e)>Bi))continue;let f=s.getNormal(new A),d=[...tf(e,l,c),...tf(e,c,h),...tf(e,h,l)];o.push(...d.map(u=>({point:u,normal:f})))}return o}function QE(n,e,t,i){return Math.min(n.x,e.x,t.x)-Bi<i.x&&i.x<Math.max(n.x,e.x,t.x)+Bi&&Math.min(n.y,e.y,t.y)-Bi<i.y&&i.y<Math.max(n.y,e.y,t.y)+Bi&&Math.min(n.z,e.z,t.z)-Bi<i.z&&i.z<Math.max(n.z,e.z,t.z)+Bi}function tf(n,e,t){let[i,s]=[e.clone().sub(n),t.clone().sub(n)],[r,o]=[i.length(),s.length()];if(r<Bi||o<Bi)return[];i.divideScalar(r),s.divideScalar(o);let a=i.dot(s);return a>KE||a<JE?[]:jE.map(l=>{let c=i.clone().multiplyScalar(1-l).addScaledVector(s,l),h=1/((1-l)/r+l/o);return n.clone().addScaledVector(c,Math.min(ZE/c.length(),h/2))})}var T_=.5,eT=.05,tT=.02,nT=.001,iT=[1,3,5,7,9,11,13,15].map(n=>n*Math.PI/8),ph=class{constructor(e){this.stage=e}stage;caps=new An;ray=new jo;get width(){return this.stage.canvas.clientWidth}get height(){return this.stage.canvas.clientHeight}spot(e){let t=e.clone().project(this.stage.camera);return t.z>1||t.z<-1?null:{x:(t.x+1)/2*this.width,y:(1-t.y)/2*this.height}}pixel(e){let t=e.clone().project(this.stage.camera),i=t.clone();i.y+=2/Math.max(this.height,1);let s=this.stage.camera;return t.unproject(s).distanceTo(i.unproject(s))}line(e){let t=new Ee(e.x/this.width*2-1,1-e.y/this.height*2);return this.ray.setFromCamera(t,this.stage.camera),this.ray.ray}hit(e){this.line(e);let t=this.met()[0];return t?{ref:t.object.userData.ref,point:t.point}:null}sees(e){let t=this.spot(e);return t!==null&&this.meetsNothing(this.line(t).origin.distanceTo(e))}seen(){return[...this.stage.pieces.values()].filter(e=>e.group.visible)}solids(e,t=!0){let i=t?e.flatMap(({group:s})=>s.children.filter(sT)):e.map(s=>s.mesh);return[...this.caps.children,...i.filter(s=>s.visible)]}shows(e,t,i){if(this.isCutAway(t))return!1;let{matrix:s}=e.group,r=t.clone().applyMatrix4(s.clone().invert());return E_(e.mesh.geometry,r).some(({point:o,normal:a})=>{let l=o.applyMatrix4(s),c=this.spot(l);if(!c||this.isCutAway(l))return!1;let{origin:h,direction:f}=this.line(c);return a.clone().transformDirection(s).dot(f)<-nT&&!this.meets(i,h.distanceTo(l)-tT,e.mesh)})}seesAll(e,t){let i=this.isCutAway(e)?[]:this.round(e),s=r=>!this.meets(t,this.line(r).origin.distanceTo(e)-T_);return i.length>0&&i.every(s)}round(e){let t=this.spot(e);if(!t)return[];let i=eT/this.pixel(e),s=iT.map(r=>({x:t.x+Math.cos(r)*i,y:t.y+Math.sin(r)*i}));return[t,...s]}isClear(e,t){let i=t.clone().sub(e),s=i.length();return this.ray.set(e,i.normalize()),!this.isCutAway(t)&&this.meetsNothing(s)}isCutAway(e){return this.stage.clipping.some(t=>t.distanceToPoint(e)<-.001)}meetsNothing(e){return!this.met().some(t=>t.distance<e-T_)}meets(e,t,i){this.ray.far=t;let s=e.findIndex(r=>(r===i||!rT(r))&&this.uncut(r).length>0);return this.ray.far=1/0,s>0&&e.unshift(...e.splice(s,1)),s>=0}uncut(e){let t=e.parent===this.caps;return this.ray.intersectObject(e,!1).filter(i=>t||!this.isCutAway(i.point))}met(){return this.ray.intersectObjects(this.solids(this.seen(),!1),!1).filter(e=>e.object.parent===this.caps||!this.isCutAway(e.point))}};function sT(n){return n instanceof yt}function rT({material:n}){return n.transparent}var oT={sheet:0,"end grain":1,"along the grain":2,other:3},aT={sheet:8,"end grain":5.5,"along the grain":5,other:8};function A_(n,e){return new vn({side:zn,uniforms:{paper:{value:new Re(Vs("sheet"))},ink:{value:new Re(Vs("ink"))},kind:{value:oT[n]},slant:{value:e?-1:1},pitch:{value:10},along:{value:0}},vertexShader:lT,fragmentShader:cT})}function R_(n,e){return 2**(Math.round(2*Math.log2(aT[n]*e))/2)}var lT=`
attribute vec2 place;
varying vec2 at;
void main() {
  at = place;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}`,cT=`
uniform vec3 paper;
uniform vec3 ink;
uniform int kind;
uniform float slant;
uniform float pitch;
uniform float along;
varying vec2 at;

// How much of a pixel lies on lines that are a pitch apart.
float lines(float way, float width) {
  float wide = fwidth(way);
  float off = abs(fract(way / pitch + 0.5) - 0.5) * pitch;
  return 1.0 - smoothstep(width * wide - 0.5 * wide, width * wide + 0.5 * wide, off);
}

void main() {
  float rise = (at.x + slant * at.y) * 0.70710678;
  float fall = (at.x - slant * at.y) * 0.70710678;
  float drawn = 0.0;
  if (kind == 2) {
    float way = at.y * cos(along) - at.x * sin(along);
    float on = at.x * cos(along) + at.y * sin(along);
    float row = floor(way / pitch + 0.5);
    float dash = fract(on / (pitch * 5.0) + 0.5 * mod(row, 2.0));
    drawn = lines(way, 0.45) * step(dash, 0.78);
  } else {
    drawn = lines(rise, 0.45);
    if (kind == 0) drawn = max(drawn, lines(rise + pitch * 0.28, 0.45));
    if (kind == 3) drawn = max(drawn, lines(fall, 0.45));
  }
  gl_FragColor = vec4(mix(paper, ink, drawn * 0.85), 1.0);
  #include <colorspace_fragment>
}`;function C_(n){let e=Math.abs(n.z)>.9?new A(0,1,0):new A(0,0,1),t=new A().crossVectors(e,n).normalize();return[t,new A().crossVectors(n,t)]}function P_(n,e,t,i){let{points:s,triangles:r}=us(n),o=Float64Array.from(s,h=>e.distanceToPoint(h)),a=new Map,l=new Map,c=(h,f)=>{let[d,u]=h<f?[h,f]:[f,h],m=d*s.length+u;if(!l.has(m)){let y=o[d]/(o[d]-o[u]),p=s[d].clone().lerp(s[u],y);l.set(m,new Ee(p.dot(t),p.dot(i)))}return m};for(let h=0;h<r.length;h+=3){let f=o[r[h]]>=0;if(f===o[r[h+1]]>=0&&f===o[r[h+2]]>=0)continue;let[d,u]=[-1,-1];for(let m=0;m<3;m++){let y=r[h+m],p=r[h+(m+1)%3];o[y]>=0!=o[p]>=0&&(o[p]>=0?d=c(y,p):u=c(y,p))}a.set(u,d)}return uT(hT(a).map(h=>h.map(f=>l.get(f))))}function I_({outline:n,holes:e}){let t=[n,...e].flat();return Ni.triangulateShape(n,e).flat().map(i=>t[i])}function hT(n){let e=[];for(let t of[...n.keys()]){let i=[],s=t;for(;s!==void 0&&n.has(s);){i.push(s);let r=n.get(s);n.delete(s),s=r}i.length&&e.push(i)}return e}function uT(n){let e=n.map(dT).filter(i=>i.length>2),t=e.filter(i=>Ni.area(i)>0).sort((i,s)=>Ni.area(i)-Ni.area(s)).map(i=>({outline:i,holes:[]}));for(let i of e.filter(s=>Ni.area(s)<0))t.find(({outline:s})=>fT(i[0],s))?.holes.push(i);return t}function dT(n){return n.filter((e,t)=>e.distanceTo(n.at(t-1))>1e-6)}function fT(n,e){let t=!1;return e.forEach((i,s)=>{let r=e.at(s-1);i.y>n.y!=r.y>n.y&&n.x<i.x+(n.y-i.y)/(r.y-i.y)*(r.x-i.x)&&(t=!t)}),t}var pT=.05,mT=[1,1,-1],mh=.5,nf=[{slant:0,spread:1},{slant:1,spread:1},{slant:0,spread:1.42},{slant:1,spread:1.42}],gh=class{constructor(e){this.sight=e;e.stage.scene.add(e.caps,this.outlines)}sight;outlines=new An;ink=new ui({color:Vs("ink")});hatches=new Map;cut=null;side=1;stale=!1;set(e){let t=this.looked(e);e&&e.axis!==this.cut?.axis&&(this.side=t??mT[e.axis]),this.cut=e,this.renew()}renew(){this.stale=this.stale||this.cut!==null||this.sight.caps.children.length>0,this.stale&&this.sight.stage.draw()}frame(){let e=this.looked(this.cut);e&&e!==this.side&&(this.side=e,this.stale=!0),this.stale&&this.redo(),this.stale=!1;let t=be.peek();if(!this.cut||!t)return;let i=new A(...t.low).lerp(new A(...t.high),.5),s=this.sight.pixel(i);for(let{material:r,kind:o,spread:a}of this.hatches.values())r.uniforms.pitch.value=a*R_(o,s)}dispose(){this.cut=null,this.redo(),this.sight.caps.removeFromParent(),this.outlines.removeFromParent(),this.ink.dispose()}looked(e){if(!e)return null;let t=this.sight.stage.camera.getWorldDirection(new A).getComponent(e.axis);return Math.abs(t)<pT?null:t>0?1:-1}redo(){let{stage:e,caps:t}=this.sight;for(let i of[...t.children,...this.outlines.children])i.geometry.dispose(),i.removeFromParent();if(this.cut){let i=new A().setComponent(this.cut.axis,this.side),s=new ln(i,-this.cut.at*this.side);e.cut([s]),this.close(s)}else{e.cut([]);for(let{material:i}of this.hatches.values())i.dispose();this.hatches.clear()}}close(e){let t=C_(e.normal),i=[],s=new Map(be.peek()?.parts.map(o=>[o.ref,o]));for(let o of this.sight.stage.pieces.values()){let a=s.get(o.ref);a&&o.group.visible&&i.push(...gT(o,a,e,t))}let r=[];for(let[o,a]of i.entries()){let l=new Set(r.filter((h,f)=>i[f].kind===a.kind&&yT(i[f],a))),c=nf.findIndex((h,f)=>!l.has(f));r.push(c<0?o%nf.length:c),this.draw(a,r[o])}}draw(e,t){let i=e.areas.flatMap(I_),s=new yt(L_(i.map(e.toUnit)),this.hatch(e,t)),r=new Float32Array(i.flatMap(({x:a,y:l})=>[a,l]));s.geometry.setAttribute("place",new Bt(r,2)),Object.assign(s.userData,{ref:e.ref,fitting:e.fitting}),s.matrixAutoUpdate=!1,this.sight.caps.add(s);let o=e.areas.flatMap(({outline:a,holes:l})=>[a,...l]).flatMap(a=>a.flatMap((l,c)=>[a.at(c-1),l]));this.outlines.add(new Li(L_(o.map(e.toUnit)),this.ink))}hatch({kind:e,along:t},i){let{slant:s,spread:r}=nf[i],o=e==="along the grain"?t.toFixed(2):"",a=`${e} ${i} ${o}`,l=this.hatches.get(a);return l||(l={material:A_(e,s),kind:e,spread:r},l.material.uniforms.along.value=t,this.hatches.set(a,l)),l.material}};function gT(n,e,t,[i,s]){let{matrix:r}=n.group,o=r.clone().invert(),a=t.clone().applyMatrix4(o),[l,c]=[i,s].map(u=>u.clone().transformDirection(o)),h=u=>a.normal.clone().multiplyScalar(-a.constant).addScaledVector(l,u.x).addScaledVector(c,u.y).applyMatrix4(r),f=e.grain==="width"?new A(0,1,0):new A(1,0,0),d=[];for(let u of n.group.children){if(!(u instanceof yt)||!u.visible)continue;let m=u.geometry;if(!a.intersectsBox(m.boundingBox))continue;let y=P_(m,a,l,c);if(!y.length)continue;let p=u!==n.mesh,g=p?"other":_T(e,f,a.normal),[M,w]=[new Ee(1/0,1/0),new Ee(-1/0,-1/0)];for(let C of y.flatMap(({outline:R})=>R)){let{x:R,y:_}=vT(h(C),i,s);M.set(Math.min(M.x,R),Math.min(M.y,_)),w.set(Math.max(w.x,R),Math.max(w.y,_))}let b=Math.atan2(f.dot(c),f.dot(l));d.push({ref:n.ref,fitting:p,kind:g,along:b,areas:y,low:M,high:w,toUnit:h})}return d}function _T(n,e,t){return n.kind==="sheet"?"sheet":n.grain==="none"?"other":Math.abs(e.dot(t))>Math.SQRT1_2?"end grain":"along the grain"}function vT(n,e,t){return new Ee(n.dot(e),n.dot(t))}function yT(n,e){return n.low.x<e.high.x+mh&&e.low.x<n.high.x+mh&&n.low.y<e.high.y+mh&&e.low.y<n.high.y+mh}function L_(n){return new Pt().setFromPoints([...n])}var xT=[.5,.35,.65,.2,.8];function _h(n,e){return xT.map(t=>ga(n,e,t))}function ga(n,e,t){return{x:n.x+(e.x-n.x)*t,y:n.y+(e.y-n.y)*t}}function Ln(n,e){return Math.hypot(e.x-n.x,e.y-n.y)}function Hr(n,e){let t=Ln(n,e)||1;return{x:(n.y-e.y)/t,y:(e.x-n.x)/t}}function Wr({x:n,y:e},t,i){return{x:n+t.x*i,y:e+t.y*i}}var D_=.01,ST=1;function qr({start:n,end:e,offset:t}){let i=new A(...t);return[new A(...n).add(i),new A(...e).add(i)]}function sf(n){let e=new Map;for(let i of n){let s=bT(i);e.set(s,[...e.get(s)??[],i])}let t=({places:i})=>Math.max(...i[0].map(N_));return[...e.values()].map(i=>{let s=i.length===1&&U_(i[0]),r=s?MT(i[0]):[],o=wT(i[0]);return{whole:s,inside:rf(i[0])<=0,places:[i,...r.map(a=>i.map(a))],before:o&&i.map(o)}}).sort((i,s)=>+s.whole-+i.whole||t(s)-t(i))}function Yr({start:n,end:e}){let t=[0,1,2].filter(i=>Math.abs(e[i]-n[i])>D_);return t.length===1?t[0]:null}function N_({start:n,end:e}){return new A(...n).distanceTo(new A(...e))}function bT(n){let e=Yr(n),[t,i]=qr(n).map(s=>s.toArray().map(r=>Math.round(r/ST)));return e===null?`${t} ${i}`:`${e} ${t.filter((s,r)=>r!==e)} ${U_(n)}`}function U_(n){let e=Yr(n),{low:t,high:i}=be.peek();return e!==null&&Math.abs(N_(n)-(i[e]-t[e]))<D_}function MT(n){let{low:e,high:t}=be.peek(),[i,s]=[Yr(n),rf(n)],[r,o,a]=[{0:e[0]},{0:t[0]},{2:t[2]}],[l,c]=[{2:t[2]+s},{2:e[2]-s}],h=Xr({0:i===1?e[0]-s:t[0]+s},i===1?r:o);return i===2?[h]:i!==1?[]:[Xr({...r,...l},{...r,...a}),Xr({...o,...l},{...o,...a}),h,Xr({...o,...c}),Xr({...r,...c},r)]}function wT(n){let{low:e}=be.peek(),[t,i]=[Yr(n),rf(n)];return i<=0||t===null||t===1?null:Xr({1:e[1]-i,...t===2?{0:e[0]}:{2:e[2]}})}function rf(n){let{low:e,high:t}=be.peek(),[i]=qr(n);return Math.max(...[0,1,2].flatMap(s=>[e[s]-i.getComponent(s),i.getComponent(s)-t[s]]))}function Xr(n,e={}){return t=>{let[i,s]=[t.start,t.end].map(o=>ET(o,e)),r=i.map((o,a)=>(n[a]??o)-o);return{start:i,end:s,offset:r,text:t.text}}}function ET(n,e){return n.map((t,i)=>e[i]??t)}function O_([n,e],[t,i],s){if($r([n,e],[t,i]))return!0;let r=[yh(n,[t,i]),yh(e,[t,i]),yh(t,[n,e]),yh(i,[n,e])];return Math.min(...r)<s}function $r([n,e],[t,i]){return vh(n,e,t)*vh(n,e,i)<0&&vh(t,i,n)*vh(t,i,e)<0}function vh(n,e,t){let s=((e.x-n.x)*(t.y-n.y)-(e.y-n.y)*(t.x-n.x))/(Ln(n,e)||1);return Math.abs(s)<1?0:Math.sign(s)}function yh(n,[e,t]){let[i,s]=[t.x-e.x,t.y-e.y],r=((n.x-e.x)*i+(n.y-e.y)*s)/(i*i+s*s||1),o=Math.min(1,Math.max(0,r));return Ln(n,{x:e.x+i*o,y:e.y+s*o})}var TT=5,AT=5,F_=20,B_=34,V_=5,RT=.2,CT=150,PT=10,IT=12,LT=.5,DT=.98,xh=class{constructor(e){this.sight=e}sight;seen=null;eye="";waiting;renew(){this.eye=""}stop(){clearTimeout(this.waiting),this.sight.stage.awaited.delete(this)}reach(){let e=Wn.value?Ss.value:null,t=bs.value,i=t?zr[t.name]:Ms.peek()??zr.corner,s=Math.abs(ii(i).y);return sf(e??[]).flatMap(({places:r,before:o})=>{let[a,l]=r,c=Yr(a[0])===1;return[...a,...s<LT&&o||[],...s<DT&&c&&l||[]].flatMap(qr)})}labels(){if(!Wn.peek())return[];let e=be.peek()?.parts.find(r=>r.ref===et.peek()),t=e&&this.sight.stage.pieces.get(e.ref),i=e&&t?.group.visible?this.ofPart(e,t):[],s=bn.peek()>0?[]:sf(Ss.peek()??[]);return this.look(s),[...i,...this.ofUnit(this.seen??s)]}ofUnit(e){let t=[];return e.flatMap(({whole:i,inside:s,places:r,before:o},a)=>{let l=y=>this.spots(y),c=r.map(l).filter(y=>y!==null),h=s?c:c.filter(NT),f=h.length||!o?h:[l(o)].filter(y=>y!==null),u=f.find(y=>this.isFree(y,t))??(i?f[0]??c[0]:void 0);if(!u)return[];t.push(...u);let m=(r[0]??o).map(({text:y})=>y);return u.flatMap((y,p)=>k_(`dimension ${a}.${p}`,m[p],y).map(g=>({...g,chain:`${a}`})))})}spots(e){let t=e.map(r=>[...[r.start,r.end].map(a=>new A(...a)),...qr(r)].map(a=>this.sight.spot(a))),i=t.filter(r=>r.every(o=>o)),s=i.some(([,,r,o])=>Ln(r,o)<V_);return i.length<t.length||s?null:i}isFree(e,t){return e.every(([i,s,r,o])=>[r,o].every(a=>this.isInPicture(a))?t.every(([a,l,c,h])=>!O_([r,o],[c,h],IT)&&!$r([r,o],[a,c])&&!$r([r,o],[l,h])&&!$r([i,r],[c,h])&&!$r([s,o],[c,h])):!1)}isInPicture({x:e,y:t}){return e>0&&t>0&&e<this.sight.width&&t<this.sight.height}ofPart(e,t){let i=e.size.split(" x "),{min:s,max:r}=t.box,o=this.sight.spot(s.clone().lerp(r,.5).applyMatrix4(t.group.matrix));return!o||i.length!==3?[]:i.flatMap((a,l)=>{let h=OT(l,s,r).map(f=>f.map(d=>this.sight.spot(d.applyMatrix4(t.group.matrix)))).filter(f=>f.every(d=>d)).sort((f,d)=>z_(d,o)-z_(f,o)).flatMap(([f,d])=>{let u=FT(o,f,d),m=[f,d,Wr(f,u,F_),Wr(d,u,F_)];return k_(`own ${l}`,a,m)});return UT(h)})}look(e){let{stage:t}=this.sight,{matrixWorld:i,projectionMatrix:s}=t.camera,r=[...i.elements,...s.elements].join();r!==this.eye&&(this.eye=r,clearTimeout(this.waiting),t.awaited.add(this),this.waiting=setTimeout(()=>{t.awaited.delete(this),this.seen=e.flatMap(o=>{let a=h=>h.every(f=>this.sees(f)),l=o.places.filter(a),c=o.before&&a(o.before)?o.before:null;return l.length||c?[{...o,places:l,before:c}]:[]}),t.draw()},CT))}sees(e){let[t,i]=qr(e);return[0,.5,1].every(s=>this.sight.sees(t.clone().lerp(i,s)))}};function NT(n){return n.every(([e,t,i,s])=>Math.max(Ln(e,i),Ln(t,s))>=PT)}function k_(n,e,[t,i,s,r]){let o=Ln(s,r);if(o<V_)return[];let a=h=>{h.line("dimension",s,r);for(let[f,d,u]of[[t,s,r],[i,r,s]])h.line("dimension",f,BT(f,d,AT)),h.tick("dimension",d,u,TT)},l=o<B_?[r,s]:_h(s,r),c=o<B_?"beside":"on";return[{key:n,kind:"dimension",text:e,spots:l,stands:c,along:[s,r],lines:a}]}function UT(n){return n.reduceRight((e,t)=>[{...t,...e[0]&&{instead:e[0]}}],[])}function OT(n,e,t){let[i,s]=[0,1,2].filter(r=>r!==n);return[e,t].flatMap(r=>[e,t].map(o=>{let a=e.clone();return a.setComponent(i,r.getComponent(i)),a.setComponent(s,o.getComponent(s)),[a,a.clone().setComponent(n,t.getComponent(n))]}))}function z_([n,e],t){let i=ga(n,e,.5);return Ln(i,t)+RT*(i.y-t.y)}function FT(n,e,t){let{x:i,y:s}=Hr(e,t),r=ga(e,t,.5),o=(r.x-n.x)*i+(r.y-n.y)*s<0?-1:1;return{x:i*o,y:s*o}}function BT(n,e,t){return ga(n,e,1+t/(Ln(n,e)||1))}var kT=["dimension","leader","measure"],G_="http://www.w3.org/2000/svg",Sh=class{sheet=document.createElementNS(G_,"svg");paths=new Map;drawn=new Map;constructor(e){this.sheet.setAttribute("aria-hidden","true"),this.sheet.setAttribute("class","ink");for(let t of kT){let i=["halo","line"].map(s=>{let r=document.createElementNS(G_,"path");return r.setAttribute("class",`${t} ${s}`),this.sheet.append(r),r});this.paths.set(t,i)}e.prepend(this.sheet)}begin(){this.drawn.clear()}line(e,t,i){this.put(e,`M${of(t)}L${of(i)}`)}ring(e,{x:t,y:i},s){let r=`a${s},${s} 0 1 0`;this.put(e,`M${of({x:t-s,y:i})}${r} ${2*s},0${r} ${-2*s},0`)}tick(e,t,i,s){let r=Math.atan2(i.y-t.y,i.x-t.x)+Math.PI/4,[o,a]=[Math.cos(r)*s,Math.sin(r)*s];this.line(e,{x:t.x-o,y:t.y-a},{x:t.x+o,y:t.y+a})}end(){for(let[e,t]of this.paths){let i=(this.drawn.get(e)??[]).join("");for(let s of t)s.setAttribute("d",i)}}remove(){this.sheet.remove()}put(e,t){let i=this.drawn.get(e);i?i.push(t):this.drawn.set(e,[t])}};function of({x:n,y:e}){return`${n.toFixed(1)},${e.toFixed(1)}`}function H_(n,e,t,i){let s={n:()=>e.step(1),p:()=>e.step(-1),o:()=>js(et.peek()),Escape:()=>{Ht.peek()?t.back()||(Ht.value=!1):Mn(null)}},r={c:()=>i(t.step(1)),C:()=>i(t.step(-1)),Enter:()=>t.enter()};return zd(n,({key:o})=>(Ht.peek()?r[o]:void 0)??s[o])}var bh=3,ds=4,Zr=14,zT=6,Mh=class{constructor(e){this.layer=e}layer;shown=new Map;place(e,t){let i=this.covered(),s=[];for(let o of VT(e)){let[a,l]=[i.length,s.length],c=o.map(f=>{let d=this.found(f,this.worded(f),i,s,GT(e,f));return d&&i.push(d.box),d?.as.along&&s.push({line:d.as.along,box:d.box}),d}),h=c.every(f=>f);h||([i.length,s.length]=[a,l]),o.forEach((f,d)=>this.show(f,h?c[d]:null,t))}let r=new Set(e.map(o=>o.key));for(let[o,a]of this.shown)r.has(o)||(a.element.remove(),this.shown.delete(o))}show(e,t,i){let{element:s}=this.worded(e);if(s.hidden=!t,!t)return;let{left:r,top:o,width:a,height:l}=t.box;s.style.transform=`translate(${Math.round(r)}px, ${Math.round(o)}px)`,t.as.lines?.(i,{x:r+a/2,y:o+l/2})}clear(){for(let{element:e}of this.shown.values())e.remove();this.shown.clear()}found(e,t,i,s,r){let{clientWidth:o,clientHeight:a}=this.layer;for(let h=e;h;h=h.instead){let{along:f}=h;if(f&&s.some(({box:m})=>af(f,m)))continue;let d=W_(h,t).filter(m=>WT(m,o,a)&&!i.some(y=>X_(m,y))&&!(f&&s.some(({line:y})=>af(y,m)))),u=d.find(m=>!r.some(y=>af(y,m)))??d[0];if(u)return{box:u,as:h}}if(e.along)return null;let c=W_(e,t).map(h=>({...h,left:Math.max(ds,Math.min(h.left,o-ds-h.width)),top:Math.max(ds,Math.min(h.top,a-ds-h.height))})).find(h=>!i.some(f=>X_(h,f)));return c?{box:c,as:e}:null}covered(){let e=this.layer.getBoundingClientRect();return[...this.layer.parentElement?.children??[]].filter(i=>i!==this.layer&&i.tagName!=="CANVAS").flatMap(i=>[...i.children]).map(i=>i.getBoundingClientRect()).filter(({width:i,height:s})=>i>0&&s>0).map(({left:i,top:s,width:r,height:o})=>({left:i-e.left,top:s-e.top,width:r,height:o}))}worded(e){let t=this.shown.get(e.key);if(!t){let i=document.createElement("span");i.className=`label ${e.kind}`,this.layer.append(i),t={element:i,text:"",width:0,height:0},this.shown.set(e.key,t)}return t.text!==e.text&&(t.element.textContent=t.text=e.text,t.element.hidden=!1,t.width=t.element.offsetWidth,t.height=t.element.offsetHeight),t}};function VT(n){let e=[];for(let t of n){let i=e.at(-1);i&&t.chain!==void 0&&i[0].chain===t.chain?i.push(t):e.push([t])}return e}function W_(n,e){let{width:t,height:i}=e;if(n.stands==="on")return n.along?HT(n,n.along,e):n.spots.map(s=>lf(s,e));if(n.stands!=="beside"){let{clear:s}=n.stands,r=q_(s,e);return n.spots.flatMap(o=>[r,-r].map(a=>lf(Wr(o,s,a),e)))}return n.spots.flatMap(({x:s,y:r})=>[r+Zr,r-Zr-i,r-2*Zr-i].flatMap(o=>[s+Zr,s-Zr-t,s-t/2].map(a=>({left:a,top:o,width:t,height:i}))))}function lf({x:n,y:e},{width:t,height:i}){return{left:n-t/2,top:e-i/2,width:t,height:i}}function q_(n,{width:e,height:t}){return(Math.abs(n.x)*e+Math.abs(n.y)*t+Zr)/2}function GT(n,e){return e.along?n.flatMap(t=>t!==e&&t.along?[t.along]:[]):[]}function HT({spots:n},[e,t],{width:i,height:s}){let r=Hr(e,t),o=Math.min(i/Math.abs(r.y),s/Math.abs(r.x)),a=q_(r,{width:i,height:s});return(Ln(e,t)<o+2*zT?[a,-a]:[0,a,-a]).flatMap(c=>n.map(h=>lf(Wr(h,r,c),{width:i,height:s})))}function af([n,e],{left:t,top:i,width:s,height:r}){let[o,a]=[0,1];for(let[l,c,h,f]of[[n.x,e.x-n.x,t,t+s],[n.y,e.y-n.y,i,i+r]]){if(!c&&(l<h||l>f))return!1;if(!c)continue;let[d,u]=[(h-l)/c,(f-l)/c];o=Math.max(o,Math.min(d,u)),a=Math.min(a,Math.max(d,u))}return o<a}function WT(n,e,t){return n.left>=ds&&n.top>=ds&&n.left+n.width<=e-ds&&n.top+n.height<=t-ds}function X_(n,e){return n.left<e.left+e.width+bh&&e.left<n.left+n.width+bh&&n.top<e.top+e.height+bh&&e.top<n.top+n.height+bh}var XT=.985,qT=50,YT=.9998,$T=8,ZT=.02,KT=.01,Y_=new WeakMap;function Kr(n){let e=Y_.get(n);return e||Y_.set(n,e=JT(n)),e}function JT(n){let{points:e,triangles:t}=us(n),{ways:i,rounded:s}=QT(e.length,t,jT(n)),r=f=>{let d=i.get(f);return d.length!==2||tA(e,d[0],f,d[1])>qT},o=[...i.keys()].filter(r),a=[],l=[],c=new Set;for(let f of[...o,...i.keys()])for(let d of i.get(f)){let u=nA(f,d,i,r,c);if(!u)continue;let m=u.map(p=>e[p]);a.push(...iA(m));let y=u[0]===u.at(-1)?rA(m.slice(1)):null;y&&l.push(y)}let h=s.map(([f,d])=>[e[f],e[d]]);return{corners:o.map(f=>e[f]),edges:a,centres:l,roundings:h}}function jT(n){let e=n.getAttribute("normal"),t=n.getIndex();return Array.from(t.array,i=>new A().fromBufferAttribute(e,i))}function QT(n,e,t){let i=new Map,s=new Map,r=[];for(let o=0;o<e.length;o+=3){let a=eA(t,o);for(let[l,c]of[[o,o+1],[o+1,o+2],[o+2,o]]){let[h,f]=[e[l],e[c]],d=Math.min(h,f)*n+Math.max(h,f),[u,m]=h<f?[l,c]:[c,l],y={low:t[u],high:t[m],round:a},p=i.get(d);if(!p){i.set(d,y);continue}let g=Math.min(p.low.dot(y.low),p.high.dot(y.high))<XT;p.round===a&&!g||($_(s,h,f),$_(s,f,h),g||r.push([h,f]))}}return{ways:s,rounded:r}}function eA(n,e){let[t,i,s]=[n[e],n[e+1],n[e+2]];return Math.min(t.dot(i),i.dot(s),s.dot(t))<YT}function $_(n,e,t){let i=n.get(e);i?i.push(t):n.set(e,[t])}function tA(n,e,t,i){let[s,r]=[new A,new A];return s.subVectors(n[t],n[e]),r.subVectors(n[i],n[t]),$t.radToDeg(s.angleTo(r))}function nA(n,e,t,i,s){if(s.has(`${n} ${e}`))return null;let r=[n,e];for(;;){let[o,a]=r.slice(-2);if(s.add(`${o} ${a}`).add(`${a} ${o}`),a===n||i(a))return r;r.push(t.get(a).find(l=>l!==o))}}function iA(n){let e=[];for(let t=1;t<n.length;t++){let[i,s]=[n[t-1],n[t]],r=e.at(-1);r&&sA(r.from,i,s)?r.to=s:e.push({from:i,to:s,curved:!1})}if(e.length>1)for(let t of e)t.curved=!0;return e}function sA(n,e,t){return new A().subVectors(e,n).angleTo(new A().subVectors(t,e))<KT}function rA(n){if(n.length<$T)return null;let e=Math.floor(n.length/3),t=oA(n[0],n[e],n[2*e]),i=t.distanceTo(n[0]);return n.every(r=>Math.abs(r.distanceTo(t)-i)<ZT*i)?t:null}function oA(n,e,t){let i=new A().subVectors(e,n),s=new A().subVectors(t,n),r=new A().crossVectors(i,s);return s.clone().multiplyScalar(i.lengthSq()).sub(i.clone().multiplyScalar(s.lengthSq())).cross(r).divideScalar(2*r.lengthSq()).add(n)}var Z_=1.5,aA=24;function hf(n,e,t){let i=n.hit(e),s=n.line(e).clone(),r=[],o=[],a=[],l=n.seen().filter(u=>lA(u,s,n,t));for(let u of l){let m=new cf(n,u.group.matrix),y=(w,b,C)=>{let R=m.off(C,e);if(R>t)return;let _=C.clone().applyMatrix4(u.group.matrix);w.push({ref:u.ref,point:C,what:b,off:R,place:_})},{corners:p,centres:g,edges:M}=Kr(u.mesh.geometry);for(let w of p)y(r,"corner",w);for(let w of g)y(r,"centre of a hole",w);for(let w of M)m.offLine(w.from,w.to,e)>t||(w.curved||y(o,"middle of an edge",hA(w)),y(a,"edge",cA(w,s,u.group.matrix)))}let c=n.solids(l),h=n.solids(l,!1),f=({what:u,ref:m,place:y})=>u==="centre of a hole"?n.seesAll(y,h):n.shows(n.stage.pieces.get(m),y,c);for(let u of[r,o,a]){let m=u.sort((y,p)=>uA(y,p,i?.ref,n)).slice(0,aA).find(f);if(m)return{ref:m.ref,point:m.point,what:m.what}}if(!i)return null;let{matrix:d}=n.stage.pieces.get(i.ref).group;return{ref:i.ref,point:i.point.applyMatrix4(d.clone().invert()),what:"face"}}function uf(n,{ref:e,point:t}){let i=n.stage.pieces.get(e);return i?t.clone().applyMatrix4(i.group.matrix):null}function lA(n,e,t,i){let{matrix:s}=n.group,r=n.box.getCenter(new A).applyMatrix4(s),o=n.box.clone().expandByScalar(2*i*t.pixel(r));return e.clone().applyMatrix4(s.clone().invert()).intersectsBox(o)}var cf=class{e;across;down;constructor(e,t){let{projectionMatrix:i,matrixWorldInverse:s}=e.stage.camera,r=i.clone().multiply(s).multiply(t);this.e=r.elements,this.across=e.width/2,this.down=e.height/2}off(e,t){let i=this.row(3,e);return i>0?Math.hypot(this.x(e,i)-t.x,this.y(e,i)-t.y):1/0}offLine(e,t,i){let[s,r]=[this.row(3,e),this.row(3,t)];if(s<=0||r<=0)return s<=0&&r<=0?1/0:0;let[o,a]=[this.x(e,s),this.y(e,s)],[l,c]=[this.x(t,r)-o,this.y(t,r)-a],h=l*l+c*c,f=h?((i.x-o)*l+(i.y-a)*c)/h:0,d=Math.min(1,Math.max(0,f));return Math.hypot(o+d*l-i.x,a+d*c-i.y)}x(e,t){return(this.row(0,e)/t+1)*this.across}y(e,t){return(1-this.row(1,e)/t)*this.down}row(e,{x:t,y:i,z:s}){let{e:r}=this;return r[e]*t+r[e+4]*i+r[e+8]*s+r[e+12]}};function cA(n,e,t){let i=e.clone().applyMatrix4(t.clone().invert()),s=new A;return i.distanceSqToSegment(n.from,n.to,void 0,s),s}function hA(n){return n.from.clone().lerp(n.to,.5)}function uA(n,e,t,i){let s=Math.round(n.off/Z_)-Math.round(e.off/Z_);if(s)return s;if(n.ref===t!=(e.ref===t))return n.ref===t?-1:1;let r=i.stage.camera.position;return n.place.distanceTo(r)-e.place.distanceTo(r)}function df(n,e){let t=e.clone().applyMatrix4(n.home),i=Es(n.ref);if(!i)return t;let s=n.moved(),[r,o]=i.hinge;if(r!==void 0&&o!==void 0){let c=new A(r,o,0),h=new Ke().extractRotation(s);return t.sub(c).applyMatrix4(h).add(c)}let a=Oa.peek()?.[n.ref]??[0,0,0],l=new A().setFromMatrixPosition(s);return t.add(l).addScaledVector(new A(...a),-bn.peek())}var K_={mouse:12,touch:24},J_=6,e0=.001,Eh=class{constructor(e){this.sight=e}sight;from=null;aimed=null;hidden=!1;shapes=new Map;touched(e,t){this.take(hf(this.sight,e,K_[t])),this.aimed=null}hovered(e){this.aimed=e&&hf(this.sight,e,K_.mouse),this.hidden=!1,this.sight.stage.draw()}step(e){let t=this.sight.stage.pieces.get(et.peek()??"");if(!t)return"choose a part first";if(!t.group.visible)return`${t.ref} is out of sight`;let i=f=>f.clone().applyMatrix4(t.group.matrix),s=Kr(t.mesh.geometry).corners;if(!s.length)return`${t.ref} has no corners`;let r=s.filter(f=>!this.sight.isCutAway(i(f)));if(!r.length)return`no corner of ${t.ref} is left by the cut`;let o=this.aimed?.ref===t.ref?r.indexOf(this.aimed.point):-1,l=((o<0&&e<0?r.length-1:o+e)+r.length)%r.length,c=r[l];this.aimed={ref:t.ref,point:c,what:"corner"},this.hidden=!this.sight.shows(t,i(c),this.sight.solids(this.sight.seen())),this.sight.stage.draw();let h=`${this.said(this.aimed)}, ${l+1} of ${r.length}, ${pA(t,c)}`;return this.hidden?`${h}, hidden`:h}stop(){this.hold(null),this.aimed=null,this.sight.stage.draw()}enter(){this.take(this.aimed)}back(){let e=_n.peek(),t=this.from!==null||e.length>0;return this.from?this.hold(null):_n.value=e.slice(0,-1),this.aimed=null,this.sight.stage.draw(),t}renew(){let{pieces:e}=this.sight.stage,t=i=>{let s=e.get(i.ref),r=this.shapes.get(i.ref);return!s||!r||r===s.mesh.geometry?i:{...i,point:mA(i,r,s)}};_n.value=_n.peek().map(({from:i,to:s})=>({from:t(i),to:t(s)})),this.from&&!e.has(this.from.ref)&&this.hold(null),this.aimed=null,this.shapes=new Map([...e].map(([i,s])=>[i,s.mesh.geometry]))}labels(e){let t=[],i=[];return _n.peek().forEach((s,r)=>{let o=this.measured(s);if(!o)return;i.push(o);let{spots:a,clear:l}=this.drawn(e,wh(s.from),wh(s.to)),{width:c,depth:h,height:f}=o.along,d=`${o.distance}
width ${c}, depth ${h}, height ${f}`;t.push({key:`measure ${r}`,kind:"measure",text:d,spots:a,stands:{clear:l}})}),JSON.stringify(i)!==JSON.stringify(oo.peek())&&(oo.value=i),this.from&&t.unshift(...this.pointed(e,"from",this.from)),this.aimed&&t.unshift(...this.pointed(e,"aimed",this.aimed,this.hidden)),t}take(e){if(!(e&&this.from&&fA(e,this.from))){if(e&&this.from){let t={from:j_(this.from),to:j_(e)};_n.value=[..._n.peek(),t],this.hold(null)}else e&&this.hold(e);this.sight.stage.draw()}}hold(e){this.from=e,ro.value=e&&this.said(e)}pointed(e,t,i,s=!1){let r=uf(this.sight,i),o=r&&this.sight.spot(r);if(!o)return[];e.ring("measure",o,J_);let a=s?`${this.said(i)}, hidden`:this.said(i);return[{key:t,kind:"measure",text:a,spots:[o],stands:"beside"}]}drawn(e,t,i){let s=[t,i].map(a=>{let l=uf(this.sight,a);return l&&this.sight.spot(l)}),[r,o]=s;if(!r||!o)return{spots:[],clear:{x:0,y:1}};e.line("measure",r,o);for(let a of[r,o])e.ring("measure",a,J_/2);return{spots:_h(r,o),clear:Hr(r,o)}}measured({from:e,to:t}){let{pieces:i}=this.sight.stage,[s,r]=[i.get(e.ref),i.get(t.ref)];if(!s||!r)return null;let o=be.peek()?.unit??"mm",a=df(r,new A(...t.point)).sub(df(s,new A(...e.point))),[l,c,h]=a.toArray().map(f=>su(Math.abs(f),o));return{from:this.said(wh(e)),to:this.said(wh(t)),mm:a.length(),distance:`${su(a.length(),o)} ${o}`,along:{width:l,depth:c,height:h}}}said({what:e,ref:t,point:i}){let s=`${e} of ${t}`.replace("centre of a hole of","centre of a hole in"),r=this.sight.stage.pieces.get(t);return(r&&e!=="face"?Kr(r.mesh.geometry).roundings:[]).some(l=>dA(i,l))?`${s} (where its rounding begins)`:s}};function dA(n,[e,t]){return new Ns(e,t).closestPointToPoint(n,!0,new A).distanceTo(n)<e0}function fA(n,e){return n.ref===e.ref&&n.point.distanceTo(e.point)<e0}function j_({ref:n,point:e,what:t}){return{ref:n,point:e.toArray(),what:t}}function wh({ref:n,point:e,what:t}){return{ref:n,point:new A(...e),what:t}}function pA(n,e){let i=n.box.clone().applyMatrix4(n.home).getCenter(new A),{x:s,y:r,z:o}=e.clone().applyMatrix4(n.home);return[o>i.z?"upper":"lower",s>i.x?"right":"left",r>i.y?"back":"front"].join(" ")}function mA(n,e,t){let[i,s]=[e.boundingBox,t.box],o=new A(...n.point).sub(i.min).divide(Q_(i)).multiply(Q_(s)).add(s.min),{corners:a,centres:l}=Kr(t.mesh.geometry),c={corner:a,"centre of a hole":l},h=n.what in c?c[n.what]:[],f=u=>u.distanceToSquared(o);return h.reduce((u,m)=>f(m)<f(u)?m:u,h[0]??o).toArray()}function Q_(n){return n.getSize(new A)}var t0=4,gA=.25,_A=3,vA=.4,yA=8,Th=60,xA=[25,-20,60].flatMap(n=>[0,45,90,135,180,225,270,315].map(e=>ii({azimuth:e,rise:n}))),Ah=class{constructor(e){this.sight=e}sight;reveal(e){let t=new Set(en.peek()),i=new Set(Ct.peek());for(let s of be.peek()?.parts??[])e.includes(s.ref)&&(t.delete(s.layer),i.delete(s.ref));t.size<en.peek().size&&(en.value=t),i.size<Ct.peek().size&&(Ct.value=i),this.turn(e)}labels(){let e=gt.peek().findings?.find(co);if(e?.at.length!==3)return[];let t=new A(...e.at),i=this.sight.stage.pieces.get(e.parts[0]??""),s=this.sight.spot(i?t.applyMatrix4(i.moved()):t);if(!s)return[];let r=(l,c)=>{l.line("leader",c,s),l.ring("leader",s,yA)},o=[-Th,Th].flatMap(l=>[Th,-Th].map(c=>({x:s.x+c,y:s.y+l})));return[{key:"finding",kind:"finding",text:`${e.severity}: ${e.rule}`,spots:o,stands:{clear:{x:0,y:1}},lines:r}]}turn(e){let{stage:t}=this.sight,i=e.slice(0,_A).flatMap(l=>this.pointsOf(l));if(!i.length||this.share(i,t.camera.position)>=gA)return;let{target:s}=t.controls,r=t.camera.position.clone().sub(s),o=r.length(),a=null;for(let l of[...xA].sort((c,h)=>h.dot(r)-c.dot(r))){let c=this.share(i,s.clone().addScaledVector(l,o));if(c>(a?.share??0)&&(a={way:l,share:c}),c>=vA)break}a&&t.turn(a.way)}share(e,t){return e.filter(i=>this.sight.isClear(t,i)).length/e.length}pointsOf(e){let t=this.sight.stage.pieces.get(e);if(!t)return[];let{points:i,triangles:s}=us(t.mesh.geometry),r=s.length/3,o=Math.max(1,Math.floor(r/t0)),a=[];for(let l=0;l<r&&a.length<t0;l+=o){let c=new A;for(let h=0;h<3;h++)c.add(i[s[3*l+h]]);a.push(c.divideScalar(3).applyMatrix4(t.group.matrix))}return a}};var Rh=class{constructor(e){this.sight=e}sight;held=null;pointed=null;swung=!1;touched(e,t){if(this.pointed=null,t&&this.swung)return;if(this.swung=e!==null&&e.ref===et.peek()&&Es(e.ref)!==null,!e)return Mn(null);if(this.swung)return js(e.ref);let i=this.sight.stage.pieces.get(e.ref),s=e.point.clone().applyMatrix4(i.group.matrix.clone().invert());this.held={ref:e.ref,point:s},et.value=e.ref}hovered(e){let t=e&&this.sight.hit(e);!t&&!this.pointed||(this.pointed=e&&t?{ref:t.ref,spot:e}:null,this.sight.stage.draw())}step(e){let t=(be.peek()?.parts??[]).map(r=>r.ref).filter(r=>this.sight.stage.pieces.get(r)?.group.visible);if(!t.length)return;let i=t.indexOf(et.peek()??""),s=i<0?e>0?0:t.length-1:(i+e+t.length)%t.length;et.value=t[s]}labels(){if(Ht.peek())return[];let e=n0(et.peek()),t=this.pointed&&n0(this.pointed.ref),i=[];if(this.pointed&&t&&i.push(i0("pointed",t,[this.pointed.spot],"beside")),e&&e!==t){let s=this.spotOf(e.ref);s&&i.push(i0("selected",e,[s],"beside"))}return i}spotOf(e){let t=this.sight.stage.pieces.get(e);return t?.group.visible?(this.held?.ref!==e&&(this.held={ref:e,point:t.box.getCenter(new A)}),this.sight.spot(this.held.point.clone().applyMatrix4(t.group.matrix))):null}};function s0(n){return`${n.ref}, ${n.name}, ${r0(n)}`}function r0(n){return`${n.size} ${be.peek()?.unit??""}`}function n0(n){return be.peek()?.parts.find(e=>e.ref===n)??null}function i0(n,e,t,i){return{key:n,kind:"part",text:`${e.ref} ${e.name}
${r0(e)}`,spots:t,stands:i}}var SA={mouse:4,touch:10},o0={within:500,stray:20};function l0(n,e){let t=new Set,i=null,s=null,o=Object.entries({pointerdown(l){e.hovered(null),t.add(l.pointerId),i=t.size===1&&l.button===0?{...a(l),by:a0(l)}:null},pointermove(l){if(i){let{x:c,y:h}=a(l);Math.hypot(c-i.x,h-i.y)>SA[i.by]&&(i=null)}else!l.buttons&&a0(l)==="mouse"&&e.hovered(a(l))},pointerup(l){t.delete(l.pointerId);let c=i;if(i=null,!c)return;let h={...c,at:l.timeStamp},f=s!==null&&bA(s,h);s=h,e.touched(c,c.by,f)},pointercancel(l){t.delete(l.pointerId),i=null},pointerleave(){e.hovered(null)}});for(let[l,c]of o)n.addEventListener(l,c);return()=>{for(let[l,c]of o)n.removeEventListener(l,c)};function a(l){let{left:c,top:h}=n.getBoundingClientRect();return{x:l.clientX-c,y:l.clientY-h}}}function bA(n,e){let t=Math.hypot(e.x-n.x,e.y-n.y);return e.at-n.at<o0.within&&t<o0.stray}function a0(n){return n.pointerType==="touch"?"touch":"mouse"}function c0(n,e){let{stage:t}=n,i=new Sh(e),s=new Mh(e),r=new Rh(n),o=new Eh(n),a=new gh(n),l=new xh(n),c=new Ah(n),{say:h,remove:f}=MA(e),d=[l0(t.canvas,{touched(u,m,y){Ht.peek()?o.touched(u,m):r.touched(n.hit(u),y)},hovered(u){(Ht.peek()?o:r).hovered(u)}}),H_(t.canvas,r,o,h),t.onDraw(()=>{a.frame(),i.begin();let u=[o.labels(i),c.labels(),r.labels()];s.place([...u.flat(),...l.labels()],i),i.end()}),t.onMove(()=>{a.renew(),l.renew()}),Qe(()=>{a.set(Hn.value),l.renew()}),Qe(()=>t.surround(l.reach())),Qe(()=>c.reveal(Si.value)),Qe(()=>{let u=be.value?.parts.find(m=>m.ref===et.value);h(u?s0(u):""),t.draw()}),Qe(()=>{be.value&&o.renew()}),Qe(()=>{t.canvas.classList.toggle("measuring",Ht.value),r.hovered(null),Ht.value?o.hovered(null):o.stop()}),Qe(()=>{_n.value,bi.value,Wn.value,Ss.value,t.draw()}),f,()=>a.dispose(),()=>l.stop(),()=>i.remove(),()=>s.clear()];return()=>d.forEach(u=>u())}function MA(n){let e=document.createElement("p");return e.className="heard",e.role="status",n.append(e),{say:t=>e.textContent=t,remove:()=>e.remove()}}function ff({lost:n}){let e=on.value,[t]=[...e?.photographs??[],...e?.drawings??[]];return v("div",{class:"unseen",role:"region","aria-label":"Instead of the picture",tabIndex:0,children:[v("p",{role:"status",children:[n?"The browser has taken the picture in space away, as it does when a page was put away for long or the graphics begin anew. It comes back by itself, as it was; if it doesn't, load this page again.":"This browser can't draw in space (it has no WebGL 2, or it is switched off), so the unit can't be turned here."," ","Everything else on this page holds."]}),t&&v("img",{class:"instead",src:t[1],alt:t[0]})]})}var wA="The unit in space. Arrow keys turn it, with Shift they move it; plus and minus zoom; 0 shows the whole. N and P choose the next part and the one before; O opens or shuts a door or drawer; Escape lets go. While you measure, C aims at corners of the chosen part, and Enter takes one.";function h0(){let n=wt(null),e=wt(null),[t,i]=Hi(!1),[s,r]=Hi(!1),[o,a]=Hi(!1);return Gn(()=>{let l=TA(n.current);if(!l){i(!0);return}let c=new ph(l);Object.assign(window,{stage:l,sight:c,formatLength:wi});let h=e.current,f=l.onDraw(()=>{l.pieces.size&&(f(),r(!0))}),d=[f,e_(l),...RA(l),M_(l),c0(c,h),Qg(l,h),AA(l.canvas,a)];return()=>d.forEach(u=>u())},[]),t?v(ff,{lost:!1}):v(Ne,{children:[v("canvas",{ref:n,tabIndex:0,role:"application","aria-label":wA}),v("div",{class:"labels",ref:e}),o?v(ff,{lost:!0}):!s&&v(EA,{})]})}function EA(){return!be.value&&mn.value.length>0?null:v("p",{class:"coming",role:"status",children:be.value?"The unit is being drawn.":"The file is being read."})}function TA(n){return document.createElement("canvas").getContext("webgl2")?new fh(n):null}function AA(n,e){let t=({type:s})=>e(s==="webglcontextlost"),i=["webglcontextlost","webglcontextrestored"];for(let s of i)n.addEventListener(s,t);return()=>{for(let s of i)n.removeEventListener(s,t)}}function RA(n){let e=Ms.peek();return e&&n.eye.restore(e),n.eye.rested=t=>Ms.value=t,[Qe(()=>{be.value&&n.show(be.value)}),Qe(()=>{be.value&&n.clothe(rp.value??{})}),Qe(()=>n.pull(Oa.value,bn.value)),Qe(()=>n.swing(oi.value)),Qe(()=>n.hide(en.value,Ct.value)),Qe(()=>{let t=Si.value;n.light(bi.value?CA(t):t,et.value)}),Qe(()=>{bs.value&&n.view(bs.value.name)})]}function CA(n){let e=(be.value?.motions??[]).filter(t=>t.refs.some(i=>n.includes(i)));return[...new Set([...n,...e.flatMap(t=>t.refs)])]}var u0=[[0,"Width","left"],[1,"Depth","front"],[2,"Height","bottom"]],PA={mm:1,in:25.4/16},IA=.2;function d0(){let n=be.value,e=Hn.value;if(!n)return null;let t=i=>Hn.value={axis:i,at:(n.low[i]+n.high[i])/2};return v("fieldset",{children:[v("legend",{children:"Cut across the unit's"}),v("label",{children:[v("input",{type:"radio",name:"cut",checked:e===null,onChange:()=>Hn.value=null}),"No cut"]}),u0.map(([i,s])=>v("label",{children:[v("input",{type:"radio",name:"cut",checked:e?.axis===i,onChange:()=>t(i)}),s]})),e&&v(LA,{model:n,cut:e})]})}function LA({model:n,cut:e}){let{axis:t,at:i}=e,s=n.low[t],r=n.high[t]-s,o=wi(i-s,n.unit),a=`from the ${u0[t][2]}`,l=c=>Hn.value={axis:t,at:s+c};return v("div",{class:"at",children:[v(DA,{figure:o,unit:n.unit,length:r,from:a,set:l},t),v("input",{type:"range","aria-label":`Place of the cut, ${a}`,"aria-valuetext":`${o} ${n.unit}`,min:0,max:r,step:PA[n.unit],value:i-s,onInput:c=>l(c.currentTarget.valueAsNumber)})]})}function DA({figure:n,unit:e,length:t,from:i,set:s}){let[r,o]=Hi(""),a=r===n,l=c=>{let h=Ep(c,e),f=h!==null&&h<=t+IA;o(f?"":n),f&&c!==n&&s(Math.min(h,t))};return v(Ne,{children:[v("label",{children:[v("input",{type:"text",class:"figure","aria-label":`Cut so far ${i}, in ${e}`,"aria-invalid":a,autocomplete:"off",spellcheck:!1,value:n,onChange:c=>l(c.currentTarget.value)}),e," ",i]}),v("span",{role:"status",children:a&&`Write 0 to ${wi(t,e)} ${e}.`})]})}function f0(){let n=be.value;if(!n)return null;let e=Object.keys(Mi).filter(t=>t==="fittings"||t==="room"?n[t].length>0:n.parts.some(i=>i.layer===t));return v("fieldset",{children:[v("legend",{children:"Shown"}),e.map(t=>v("label",{children:[v("input",{type:"checkbox",checked:!en.value.has(t),onChange:()=>en.value=ho(en.value,t)}),Mi[t]]}))]})}function pf(n){let e=wt(null);return v("details",{name:"tools",ref:e,onKeyDown:i=>{i.key!=="Escape"||!e.current.open||(e.current.open=!1,e.current.querySelector("summary").focus(),i.stopPropagation())},children:[v("summary",{class:n.on?"on":"",children:n.label}),v("div",{class:"leaf",children:n.children})]})}function m0(){return v("div",{class:"views",role:"group","aria-label":"Views",children:Object.keys(Jh).map(n=>v("button",{type:"button",onClick:()=>bs.value={name:n},children:Jh[n]}))})}function g0(){let n=be.value?.motions.length??0,e=[...en.value].filter(t=>t!=="room").length;return v("div",{class:"tools",role:"group","aria-label":"Tools",children:[v("label",{class:"apart",children:["Apart",v("input",{type:"range",min:0,max:1,step:.01,value:bn.value,onInput:t=>bn.value=t.currentTarget.valueAsNumber})]}),n>0&&v(Ne,{children:[v("button",{type:"button",onClick:()=>Kh(!0),children:"Open all"}),v("button",{type:"button",onClick:()=>Kh(!1),children:"Close all"})]}),v(pf,{label:e>0?`Layers, ${e} off`:"Layers",on:e>0,children:v(f0,{})}),v(pf,{label:"Cut",on:Hn.value!==null,children:v(d0,{})}),v(p0,{label:"Measure",on:Ht}),v(p0,{label:"Dimensions",on:Wn})]})}function p0({label:n,on:e}){return v("button",{type:"button","aria-pressed":e.value,onClick:()=>e.value=!e.value,children:n})}function _0(){return Gn(()=>ap(),[]),v(Ne,{children:[v("a",{class:"skip",href:"#panel",children:"Go to the words and lists beside the unit"}),v(up,{}),v("main",{class:`over-${Xn.value}`,children:[v(m0,{}),v("div",{class:"space",children:[v(h0,{}),v(mp,{})]}),v(fp,{}),v(g0,{})]}),v(qp,{})]})}async function y0(){let n=document.getElementById("told"),e=n.textContent;if(n.type==="application/json")return JSON.parse(e);if(typeof DecompressionStream>"u")return null;let t=Uint8Array.from(atob(e),s=>s.charCodeAt(0)),i=new Blob([t]).stream().pipeThrough(new DecompressionStream("gzip"));return await new Response(i).json()}function x0(n){return{...n,photographs:v0("photograph"),drawings:v0("drawing")}}function v0(n){return[...document.querySelectorAll(`.standing .${n} img`)].map(t=>[t.alt,t.src])}async function NA(){op();let n=await y0();if(!n)return;n.live&&(iu(n.live),Up()),be.value=n.model??null,gt.value=n.sections??$h,on.value=n.words?x0(n.words):null;let e=document.getElementById("page");e.replaceChildren(),document.body.classList.remove("still"),zh(v(_0,{}),e);let t=document.createElement("div");t.id="printed",document.body.append(t),zh(v(jg,{}),t)}NA();})();
